import type { Capsule } from '../../geometry/capsule.ts';
import { convexHull } from '../../geometry/convexPolygon.ts';
import type { Cylinder, Tube } from '../../geometry/cylinder.ts';
import { cylinderOutline } from '../../geometry/cylinderOutline.ts';
import type { Vec3 } from '../../geometry/vector.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Layer, LineMark, Look, Point } from '../mark.ts';

/** How space is looked at: turned so that x runs to the right of the drawing, y up it, z toward who looks (rule E1). */
export interface Turn {
  point(p: Vec3): Vec3;
  direction(d: Vec3): Vec3;
}

/** How a solid is drawn, on which layer. */
export interface Pen {
  readonly layer: Layer;
  readonly look: Look;
}

/** Corners round each end of a capsule. */
const CORNERS = 24;

/** The outline of a cylinder or disc as it is seen. */
export const cylinderMark = (solid: Cylinder, turn: Turn, { layer, look }: Pen): LineMark => {
  const seen = { ...solid, centre: turn.point(solid.centre), axis: turn.direction(solid.axis) };
  return { kind: 'line', layer, closed: true, look, points: cylinderOutline(seen) };
};

/** The outer outline of a hoop. */
export const tubeMark = ({ outerRadius, ...tube }: Tube, turn: Turn, pen: Pen): LineMark =>
  cylinderMark({ ...tube, radius: outerRadius }, turn, pen);

/** The outline of a capsule: the hull of its two ends, each seen as a circle. */
export const capsuleMark = (capsule: Capsule, turn: Turn, pen: Pen): LineMark =>
  capsulesMark([capsule], turn, pen);

/** One outline round all of some capsules: the hull of their ends. */
export function capsulesMark(
  capsules: readonly Capsule[],
  turn: Turn,
  { layer, look }: Pen,
): LineMark {
  const spots = capsules.flatMap(({ a, b, radius }) =>
    [turn.point(a), turn.point(b)].flatMap((end) =>
      Array.from({ length: CORNERS }, (_, i): Point => {
        const angle = (360 * i) / CORNERS;
        return { x: end.x + radius * cosDeg(angle), y: end.y + radius * sinDeg(angle) };
      }),
    ),
  );
  const points: readonly Point[] = convexHull(spots)?.corners ?? spots;
  return { kind: 'line', layer, closed: true, look, points };
}
