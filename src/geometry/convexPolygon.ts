import { leftOf } from './orientation.ts';
import type { Rectangle } from './plan.ts';
import { at } from './ring.ts';
import type { Frame, Vec2 } from './vector.ts';

/**
 * A convex polygon on the plan: at least three corners, anticlockwise, every corner strictly convex (no three on a line),
 * and the rectangle round it. Made by {@link convexHull}.
 */
export interface ConvexPolygon<F extends Frame = 'kit'> {
  readonly corners: readonly Vec2<F>[];
  readonly low: Vec2<F>;
  readonly high: Vec2<F>;
}

/** The smallest convex polygon round the points (monotone chain, exact turns); undefined when they all lie on one line. */
export function convexHull<F extends Frame = 'kit'>(
  points: readonly Vec2<F>[],
): ConvexPolygon<F> | undefined {
  const sorted = sortedByX(points);
  const corners = chain(sorted);
  corners.pop();
  const upper = chain(sorted.reverse());
  upper.pop();
  for (const p of upper) corners.push(p);
  if (corners.length < 3) return undefined;
  const { low, high } = rectangleRound(corners);
  return { corners, low, high };
}

/** Up to so many points, comparing them one by one is quicker than a call for every pair. */
const FEW = 40;

const isBefore = <F extends Frame>(p: Vec2<F>, q: Vec2<F>): boolean =>
  p.x < q.x || (p.x === q.x && p.y < q.y);

function sortedByX<F extends Frame>(points: readonly Vec2<F>[]): Vec2<F>[] {
  if (points.length > FEW) return [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const sorted: Vec2<F>[] = [];
  for (const p of points) {
    let place = sorted.length;
    for (; place > 0; place -= 1) {
      const before = sorted[place - 1];
      if (!before || !isBefore(p, before)) break;
      sorted[place] = before;
    }
    sorted[place] = p;
  }
  return sorted;
}

function rectangleRound<F extends Frame>(points: readonly Vec2<F>[]): Rectangle<F> {
  const low = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY };
  const high = { x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY };
  for (const { x, y } of points) {
    if (x < low.x) low.x = x;
    if (x > high.x) high.x = x;
    if (y < low.y) low.y = y;
    if (y > high.y) high.y = y;
  }
  return { low, high };
}

function chain<F extends Frame>(points: readonly Vec2<F>[]): Vec2<F>[] {
  const kept: Vec2<F>[] = [];
  for (const p of points) {
    let last = kept[kept.length - 1];
    let before = kept[kept.length - 2];
    while (last && before && leftOf(before, last, p) <= 0) {
      kept.pop();
      last = before;
      before = kept[kept.length - 2];
    }
    kept.push(p);
  }
  return kept;
}

/** True when p lies strictly inside: a point on the outline is not inside. */
export function isInside<F extends Frame>(polygon: ConvexPolygon<F>, p: Vec2<F>): boolean {
  const { corners, low, high } = polygon;
  if (p.x <= low.x || p.x >= high.x || p.y <= low.y || p.y >= high.y) return false;
  let corner = at(corners, -1);
  for (const next of corners) {
    if (leftOf(corner, next, p) <= 0) return false;
    corner = next;
  }
  return true;
}

/**
 * True when the segment from a to b passes through the inside of the polygon; running along its outline or touching it is
 * not passing. Exact for the given coordinates: a convex polygon and a segment are apart exactly when the segment's line or the
 * line of one edge separates them, and each is decided by exact turns.
 */
export function passesThrough<F extends Frame>(
  polygon: ConvexPolygon<F>,
  a: Vec2<F>,
  b: Vec2<F>,
): boolean {
  const { corners, low, high } = polygon;
  if (a.x <= low.x && b.x <= low.x) return false;
  if (a.x >= high.x && b.x >= high.x) return false;
  if (a.y <= low.y && b.y <= low.y) return false;
  if (a.y >= high.y && b.y >= high.y) return false;
  if (a.x === b.x && a.y === b.y) return isInside(polygon, a);
  return straddles(corners, a, b) && !anyEdgeSeparates(corners, a, b);
}

function straddles<F extends Frame>(corners: readonly Vec2<F>[], a: Vec2<F>, b: Vec2<F>): boolean {
  let left = false;
  let right = false;
  for (const corner of corners) {
    const side = leftOf(a, b, corner);
    if (side > 0) left = true;
    if (side < 0) right = true;
    if (left && right) return true;
  }
  return false;
}

function anyEdgeSeparates<F extends Frame>(
  corners: readonly Vec2<F>[],
  a: Vec2<F>,
  b: Vec2<F>,
): boolean {
  let corner = at(corners, -1);
  for (const next of corners) {
    if (leftOf(corner, next, a) <= 0 && leftOf(corner, next, b) <= 0) return true;
    corner = next;
  }
  return false;
}

/** The part of the segment from a to b inside the polygon, from end to end; undefined when it does not pass through. */
export function stretchInside<F extends Frame>(
  polygon: ConvexPolygon<F>,
  a: Vec2<F>,
  b: Vec2<F>,
): readonly [Vec2<F>, Vec2<F>] | undefined {
  if (!passesThrough(polygon, a, b)) return undefined;
  let enters = 0;
  let leaves = 1;
  let corner = at(polygon.corners, -1);
  for (const next of polygon.corners) {
    const atA = leftOf(corner, next, a);
    const atB = leftOf(corner, next, b);
    if (atA < 0) enters = Math.max(enters, atA / (atA - atB));
    if (atB < 0) leaves = Math.min(leaves, atA / (atA - atB));
    corner = next;
  }
  const on = (t: number): Vec2<F> => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
  return [on(enters), on(Math.max(enters, leaves))];
}

/** True when the insides of two polygons share a point; touching along an edge or at a corner is not overlapping. */
export function overlaps<F extends Frame>(p: ConvexPolygon<F>, q: ConvexPolygon<F>): boolean {
  if (p.high.x <= q.low.x || q.high.x <= p.low.x) return false;
  if (p.high.y <= q.low.y || q.high.y <= p.low.y) return false;
  return !separates(p, q) && !separates(q, p);
}

function separates<F extends Frame>(p: ConvexPolygon<F>, q: ConvexPolygon<F>): boolean {
  return p.corners.some((corner, i) => {
    const next = at(p.corners, i + 1);
    return q.corners.every((other) => leftOf(corner, next, other) <= 0);
  });
}
