import { orient2d } from 'robust-predicates';
import type { Frame, Vec2 } from './vector.ts';

/**
 * On which side of the directed line from a to b the point c lies: above 0 to the left, below 0 to the right, exactly 0 on
 * the line. The sign is exact for the given coordinates (adaptive predicates, Shewchuk 1997); the size is twice the area.
 */
export const leftOf = <F extends Frame>(a: Vec2<F>, b: Vec2<F>, c: Vec2<F>): number =>
  -orient2d(a.x, a.y, b.x, b.y, c.x, c.y);
