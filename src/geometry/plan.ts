import type { Mm } from '../units/quantity.ts';
import type { Frame, Vec2 } from './vector.ts';

/** Straight distance on the plan, mm. */
export function gap<F extends Frame>(p: Vec2<F>, q: Vec2<F>): Mm {
  const dx = p.x - q.x;
  const dy = p.y - q.y;
  return Math.sqrt(dx * dx + dy * dy);
}

/** Length of the way through the points in order, mm. */
export function wayLength<F extends Frame>(way: readonly Vec2<F>[]): Mm {
  let total = 0;
  for (let i = 1; i < way.length; i += 1) {
    const p = way[i - 1];
    const q = way[i];
    if (p && q) total += gap(p, q);
  }
  return total;
}

/** A rectangle along the axes; its edges belong to it. */
export interface Rectangle<F extends Frame = 'kit'> {
  readonly low: Vec2<F>;
  readonly high: Vec2<F>;
}

export const holds = <F extends Frame>({ low, high }: Rectangle<F>, p: Vec2<F>): boolean =>
  p.x >= low.x && p.x <= high.x && p.y >= low.y && p.y <= high.y;

/** The point of the rectangle nearest to p. */
export const nearestIn = <F extends Frame>({ low, high }: Rectangle<F>, p: Vec2<F>): Vec2<F> => ({
  x: Math.min(Math.max(p.x, low.x), high.x),
  y: Math.min(Math.max(p.y, low.y), high.y),
});

/** The point of the segment from a to b nearest to p. */
export function nearestOnSegment<F extends Frame>(a: Vec2<F>, b: Vec2<F>, p: Vec2<F>): Vec2<F> {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const size = ux * ux + uy * uy;
  const t = size > 0 ? ((p.x - a.x) * ux + (p.y - a.y) * uy) / size : 0;
  const k = Math.min(Math.max(t, 0), 1);
  return { x: a.x + k * ux, y: a.y + k * uy };
}
