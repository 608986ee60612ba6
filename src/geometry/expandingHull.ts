import type { Mm } from '../units/quantity.ts';
import { add, cross, dot, length, scale, subtract, unit, type Vec3, vec } from './vector.ts';

/** A corner of the hull, with a point that goes with it: faces carry the mean of their corners' points. */
export interface HullCorner {
  readonly point: Vec3;
  readonly middle: Vec3;
}

type Corners = readonly [HullCorner, HullCorner, HullCorner];

/** A face, anticlockwise seen from outside: its outward unit normal, and how far the origin lies inside it (mm; negative: outside). */
export interface HullFace {
  readonly corners: Corners;
  readonly normal: Vec3;
  readonly offset: Mm;
}

/** The outermost point of a convex body in a direction. */
export type Outermost = (direction: Vec3) => HullCorner;

/** A point this far outside a face sees it, mm; a face of less area (mm²) has no side. Above rounding, far below what is measured. */
const SEEN: Mm = 1e-9;

/** Four corners of a convex body that has an inside, not all on one plane. */
export function cornersAround(
  outermost: Outermost,
): readonly [HullCorner, HullCorner, HullCorner, HullCorner] {
  const farther = (direction: Vec3, from: Vec3): HullCorner => {
    const ahead = outermost(direction);
    const behind = outermost(scale(direction, -1));
    const away = ({ point }: HullCorner): Mm => Math.abs(dot(subtract(point, from), direction));
    return away(ahead) >= away(behind) ? ahead : behind;
  };
  const a = outermost(vec(1, 0, 0));
  const b = outermost(vec(-1, 0, 0));
  const line = subtract(b.point, a.point);
  // The line leads along x more or less, so that it is never along y.
  const c = farther(unit(cross(line, vec(0, 1, 0)), vec(0, 0, 1)), a.point);
  const normal = unit(cross(line, subtract(c.point, a.point)), vec(0, 1, 0));
  return [a, b, c, farther(normal, a.point)];
}

/** The hull of points that are added one by one. */
export class ExpandingHull {
  #faces: HullFace[];

  constructor([a, b, c, d]: readonly [HullCorner, HullCorner, HullCorner, HullCorner]) {
    const faceAway = (p: HullCorner, q: HullCorner, r: HullCorner, from: HullCorner): HullFace => {
      const face = faceOf(p, q, r);
      return dot(face.normal, from.point) > face.offset ? faceOf(p, r, q) : face;
    };
    this.#faces = [
      faceAway(a, b, c, d),
      faceAway(a, b, d, c),
      faceAway(a, c, d, b),
      faceAway(b, c, d, a),
    ];
  }

  /** The face that the origin is nearest to, or farthest outside of. */
  nearestFace(): HullFace {
    return this.#faces.reduce((least, face) => (face.offset < least.offset ? face : least));
  }

  /** Takes in a point outside: what it sees of the hull is replaced by faces from the seen part's border to it. */
  grow(corner: HullCorner): void {
    const sees = ({ normal, offset }: HullFace): boolean =>
      dot(normal, corner.point) > offset + SEEN;
    const seen = this.#faces.filter(sees);
    const edges = seen.flatMap(
      ({ corners: [a, b, c] }) =>
        [
          [a, b],
          [b, c],
          [c, a],
        ] as const,
    );
    const border = edges.filter(([from, to]) => !edges.some(([p, q]) => p === to && q === from));
    this.#faces = [
      ...this.#faces.filter((face) => !sees(face)),
      ...border.map(([from, to]) => faceOf(from, to, corner)),
    ];
  }

  /** The point that goes with the place of a face nearest to the origin. */
  middleOf({ corners: [a, b, c], normal, offset }: HullFace): Vec3 {
    const foot = scale(normal, offset);
    const area = (p: HullCorner, q: HullCorner): number =>
      Math.max(0, dot(normal, cross(subtract(p.point, foot), subtract(q.point, foot))));
    const shares = [area(b, c), area(c, a), area(a, b)] as const;
    const all = shares[0] + shares[1] + shares[2];
    const weighted = [a, b, c].map(({ middle }, i) => scale(middle, (shares[i] ?? 0) / all));
    return weighted.reduce(add);
  }
}

/** A face without area has no side: it is never seen and never the nearest. */
function faceOf(a: HullCorner, b: HullCorner, c: HullCorner): HullFace {
  const across = cross(subtract(b.point, a.point), subtract(c.point, a.point));
  const size = length(across);
  const corners: Corners = [a, b, c];
  if (size < SEEN) return { corners, normal: vec(0, 0, 0), offset: Number.POSITIVE_INFINITY };
  const normal = scale(across, 1 / size);
  return { corners, normal, offset: dot(normal, a.point) };
}
