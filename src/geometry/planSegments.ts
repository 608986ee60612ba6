import type { Mm } from '../units/quantity.ts';
import { leftOf } from './orientation.ts';
import { gap, nearestOnSegment } from './plan.ts';
import type { Frame, Vec2 } from './vector.ts';

/** A straight line between two points of the plan. */
export type PlanSegment<F extends Frame = 'kit'> = readonly [Vec2<F>, Vec2<F>];

/** Where two segments cross, each passing from one side of the other to the other side; undefined when they do not. The test is exact. */
export function crossing<F extends Frame>(
  first: PlanSegment<F>,
  second: PlanSegment<F>,
): Vec2<F> | undefined {
  const a = first[0];
  const b = first[1];
  const c = second[0];
  const d = second[1];
  const atC = leftOf(a, b, c);
  const atD = leftOf(a, b, d);
  const atA = leftOf(c, d, a);
  const atB = leftOf(c, d, b);
  if (!opposite(atC, atD) || !opposite(atA, atB)) return undefined;
  const t = atC / (atC - atD);
  return { x: c.x + t * (d.x - c.x), y: c.y + t * (d.y - c.y) };
}

const opposite = (p: number, q: number): boolean => (p < 0 && q > 0) || (p > 0 && q < 0);

/** How near two segments come, and the middle between their nearest points. */
export interface PlanMeeting<F extends Frame = 'kit'> {
  readonly distance: Mm;
  readonly place: Vec2<F>;
}

/** Nearest approach of two segments: 0 where they cross, else at an end of one of them. */
export function planMeeting<F extends Frame>(
  first: PlanSegment<F>,
  second: PlanSegment<F>,
): PlanMeeting<F> {
  const cross = crossing(first, second);
  if (cross) return { distance: 0, place: cross };
  const onSecond = nearer(fromEnd(first[0], second), fromEnd(first[1], second));
  const onFirst = nearer(fromEnd(second[0], first), fromEnd(second[1], first));
  return nearer(onSecond, onFirst);
}

const nearer = <F extends Frame>(p: PlanMeeting<F>, q: PlanMeeting<F>): PlanMeeting<F> =>
  q.distance < p.distance ? q : p;

const fromEnd = <F extends Frame>(end: Vec2<F>, other: PlanSegment<F>): PlanMeeting<F> =>
  between(end, nearestOnSegment(other[0], other[1], end));

const between = <F extends Frame>(p: Vec2<F>, q: Vec2<F>): PlanMeeting<F> => ({
  distance: gap(p, q),
  place: { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 },
});

/**
 * How far a point lies outside a convex outline given anticlockwise, mm; negative inside, by the distance to the nearest
 * edge; 0 on the outline.
 */
export function outsideOutline<F extends Frame>(outline: readonly Vec2<F>[], p: Vec2<F>): Mm {
  let inside = true;
  let nearest = Number.POSITIVE_INFINITY;
  for (const [i, a] of outline.entries()) {
    const b = outline[(i + 1) % outline.length] ?? a;
    const side = leftOf(a, b, p);
    if (side < 0) inside = false;
    nearest = Math.min(nearest, fromEdge([a, b], side, p));
  }
  return inside ? -nearest : nearest;
}

/** Worked from both ends alike, so that a mirrored edge is exactly as far. `side` is twice the area of edge and point. */
function fromEdge<F extends Frame>([a, b]: PlanSegment<F>, side: number, p: Vec2<F>): Mm {
  if (isBehind(a, b, p)) return gap(a, p);
  if (isBehind(b, a, p)) return gap(b, p);
  return Math.abs(side) / gap(a, b);
}

/** True when p lies behind `from` for someone there who looks toward `to`. */
const isBehind = <F extends Frame>(from: Vec2<F>, to: Vec2<F>, p: Vec2<F>): boolean =>
  (p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y) <= 0;
