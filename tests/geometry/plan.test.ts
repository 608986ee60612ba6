import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gap, holds, nearestIn, nearestOnSegment, wayLength } from '../../src/geometry/plan.ts';
import { planPoint } from './planScenes.ts';

it('the way through points is as long as its stretches, and at least the straight line', () => {
  expect(wayLength([])).toBe(0);
  expect(
    wayLength([
      { x: 0, y: 0 },
      { x: 3, y: 4 },
      { x: 3, y: 10 },
    ]),
  ).toBe(11);
  fc.assert(
    fc.property(planPoint, planPoint, planPoint, (a, b, c) => {
      expect(wayLength([a, b, c])).toBeGreaterThanOrEqual(gap(a, c) - 1e-9);
    }),
  );
});

it('no point of a segment, or of a rectangle, is nearer than the nearest one', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const shares = fc.tuple(share, share);
  fc.assert(
    fc.property(planPoint, planPoint, planPoint, shares, (a, b, p, [s, t]) => {
      const on = { x: a.x + s * (b.x - a.x), y: a.y + s * (b.y - a.y) };
      expect(gap(nearestOnSegment(a, b, p), p)).toBeLessThanOrEqual(gap(on, p) + 1e-9);
      const low = { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y) };
      const high = { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y) };
      const within = { x: low.x + s * (high.x - low.x), y: low.y + t * (high.y - low.y) };
      const nearest = nearestIn({ low, high }, p);
      expect(holds({ low, high }, nearest)).toBe(true);
      expect(gap(nearest, p)).toBeLessThanOrEqual(gap(within, p) + 1e-9);
    }),
  );
});
