import { type ConvexPolygon, passesThrough } from './convexPolygon.ts';
import { leftOf } from './orientation.ts';
import { holds, type Rectangle } from './plan.ts';
import { at } from './ring.ts';
import type { Frame, Vec2 } from './vector.ts';

/** A corner of an obstacle, with its neighbours on the outline, anticlockwise. */
export interface Corner<F extends Frame = 'kit'> {
  readonly point: Vec2<F>;
  readonly before: Vec2<F>;
  readonly after: Vec2<F>;
  /** Its place in the list of all corners, and its obstacle's in the list of obstacles. */
  readonly number: number;
  readonly obstacle: number;
  /** False outside the region (V3). */
  readonly isUsable: boolean;
}

interface Blocking {
  readonly by: readonly number[];
  readonly free: ReadonlySet<number> | undefined;
}

/**
 * The straight ways among the corners of convex obstacles that a shortest path can use. Obstacles may overlap.
 *
 * V1 A shortest path among obstacles bends only at their corners, and at a corner only round the obstacle it belongs to: so
 *    the line of each stretch leaves that obstacle on one side (a tangent), the same before and after, and the path turns to
 *    that side or goes straight on.
 * V2 A stretch is blocked by an obstacle whose inside it passes through; touching is free.
 * V3 Corners outside `region` (a rectangle) are not used. Between two points of a rectangle the straight way stays in it.
 */
export class Tangents<F extends Frame> {
  readonly #obstacles: readonly ConvexPolygon<F>[];
  readonly #corners: readonly (readonly Corner<F>[])[];

  constructor(obstacles: readonly ConvexPolygon<F>[], region: Rectangle<F> | undefined) {
    let number = 0;
    this.#obstacles = obstacles;
    this.#corners = obstacles.map(({ corners }, obstacle) =>
      corners.map((point, i) => ({
        point,
        before: at(corners, i - 1),
        after: at(corners, i + 1),
        number: number++,
        obstacle,
        isUsable: !region || holds(region, point),
      })),
    );
  }

  /** Whether the segment from a to b passes through one of these obstacles, leaving out those in `free` (V2). */
  isBlocked(a: Vec2<F>, b: Vec2<F>, { by, free }: Blocking): boolean {
    for (const i of by) {
      const obstacle = this.#obstacles[i];
      if (obstacle && passesThrough(obstacle, a, b) && !free?.has(i)) return true;
    }
    return false;
  }

  /** The first of all obstacles, without those in `free`, that the segment from a to b passes through (V2). */
  firstBlocker(a: Vec2<F>, b: Vec2<F>, free?: ReadonlySet<number>): number | undefined {
    for (let i = 0; i < this.#obstacles.length; i += 1) {
      const obstacle = this.#obstacles[i];
      if (obstacle && passesThrough(obstacle, a, b) && !free?.has(i)) return i;
    }
    return undefined;
  }

  /** Corners of one obstacle where a line from the point touches it. */
  fromPoint(point: Vec2<F>, obstacle: number): Corner<F>[] {
    const corners = this.#corners[obstacle] ?? [];
    const found: Corner<F>[] = [];
    let before: number | undefined;
    for (let i = 0; i < corners.length; i += 1) {
      const corner = corners[i];
      if (!corner) break;
      before ??= leftOf(corner.before, corner.point, point);
      const after = leftOf(corner.point, corner.after, point);
      if (before * after <= 0 && corner.isUsable) found.push(corner);
      before = after;
    }
    return found;
  }

  /** Corners of one obstacle that a path can go on to from a corner, where it comes from `from` (V1). */
  fromCorner(from: Vec2<F>, corner: Corner<F>, obstacle: number): Corner<F>[] {
    const ends =
      corner.obstacle === obstacle
        ? this.#neighbours(corner)
        : this.fromPoint(corner.point, obstacle);
    return ends.filter((end) => bendsRound(corner, from, end.point));
  }

  #neighbours({ number, obstacle }: Corner<F>): Corner<F>[] {
    const corners = this.#corners[obstacle] ?? [];
    const i = number - (corners[0]?.number ?? 0);
    return [at(corners, i + 1), at(corners, i - 1)].filter(({ isUsable }) => isUsable);
  }
}

/** V1: whether a path from `from` over the corner to `to` is bent round the corner's obstacle, or straight along it. */
export function bendsRound<F extends Frame>(
  { point, before, after }: Corner<F>,
  from: Vec2<F>,
  to: Vec2<F>,
): boolean {
  const cameBy = sideOf(leftOf(from, point, before), leftOf(from, point, after));
  const goesBy = sideOf(leftOf(point, to, before), leftOf(point, to, after));
  if (cameBy === 'across' || goesBy === 'across') return false;
  // A stretch of no length has no direction: the corner stands on another one.
  if (cameBy === 'none' || goesBy === 'none') return true;
  const turn = leftOf(from, point, to);
  return cameBy === goesBy && (cameBy === 'left' ? turn >= 0 : turn <= 0);
}

type Side = 'left' | 'right' | 'none' | 'across';

function sideOf(p: number, q: number): Side {
  if (p >= 0 && q >= 0) return p > 0 || q > 0 ? 'left' : 'none';
  return p <= 0 && q <= 0 ? 'right' : 'across';
}
