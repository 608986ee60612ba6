import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';
import type { Frame, Vec2 } from './vector.ts';

/**
 * Sides of the polygon that stands for a circle. It is drawn round the circle, so nothing inside it is nearer than the
 * radius; at its corners it is 8.3 % farther. A multiple of four, so that it is its own mirror image.
 */
const CIRCLE_SIDES = 8;

const unitCircle: readonly Vec2[] = Array.from({ length: CIRCLE_SIDES }, (_, i) => {
  const azimuth = ((i + 0.5) * 360) / CIRCLE_SIDES;
  const outside = 1 / cosDeg(180 / CIRCLE_SIDES);
  return { x: outside * cosDeg(azimuth), y: outside * sinDeg(azimuth) };
});

/** Corners of a polygon round the circle of `radius` (mm) about the centre. */
export const circleCorners = <F extends Frame>(centre: Vec2<F>, radius: Mm): Vec2<F>[] =>
  unitCircle.map((u) => ({ x: centre.x + radius * u.x, y: centre.y + radius * u.y }));

/**
 * Points whose convex hull holds everything within `distance` (mm) of the hull of `points`. A larger distance gives a hull
 * that holds the smaller one's.
 */
export function grown<F extends Frame>(points: readonly Vec2<F>[], distance: Mm): Vec2<F>[] {
  if (!(distance > 0)) return [...points];
  const found: Vec2<F>[] = [];
  for (const { x, y } of points) {
    for (const u of unitCircle) found.push({ x: x + distance * u.x, y: y + distance * u.y });
  }
  return found;
}
