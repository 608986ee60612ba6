import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type ConvexPolygon, convexHull } from '../../src/geometry/convexPolygon.ts';
import { circleCorners, grown } from '../../src/geometry/grow.ts';
import { leftOf } from '../../src/geometry/orientation.ts';
import { gap, nearestOnSegment } from '../../src/geometry/plan.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { planPoint, polygon } from './planScenes.ts';

const outline = (points: readonly Vec2[]): ConvexPolygon => {
  const found = convexHull(points);
  if (!found) throw new Error('a hull was expected');
  return found;
};
const edges = ({ corners }: ConvexPolygon): [Vec2, Vec2][] =>
  corners.map((a, i) => [a, corners[(i + 1) % corners.length] ?? a]);
/** Distance of p from the outline when it is inside (by lines) or out (to the nearest edge). */
const distanceFrom = (shape: ConvexPolygon, p: Vec2): number =>
  Math.min(...edges(shape).map(([a, b]) => gap(p, nearestOnSegment(a, b, p))));

const amount = fc.double({ min: 0.01, max: 5, noNaN: true });

it('a circle is drawn from outside: never nearer than its radius, at most 8.3 % farther', () => {
  fc.assert(
    fc.property(planPoint, amount, (centre, radius) => {
      const shape = outline(circleCorners(centre, radius));
      expect(distanceFrom(shape, centre)).toBeCloseTo(radius, 9);
      for (const corner of shape.corners) {
        expect(gap(corner, centre)).toBeLessThan(1.083 * radius);
        const mirrored = { x: 2 * centre.x - corner.x, y: corner.y };
        expect(Math.min(...shape.corners.map((c) => gap(c, mirrored)))).toBeLessThan(1e-9);
      }
    }),
  );
});

it('a grown outline keeps at least the distance, at most 8.3 % more, and a larger distance holds the smaller', () => {
  fc.assert(
    fc.property(polygon, amount, amount, (shape, k, more) => {
      const grownShape = outline(grown(shape.corners, k));
      for (const [a, b] of edges(grownShape)) {
        for (const p of [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]) {
          const distance = distanceFrom(shape, p);
          expect(distance).toBeGreaterThan(k - 1e-9);
          expect(distance).toBeLessThan(1.083 * k + 1e-9);
        }
      }
      const larger = outline(grown(shape.corners, k + more));
      for (const corner of grownShape.corners) {
        for (const [a, b] of edges(larger)) expect(leftOf(a, b, corner)).toBeGreaterThan(-1e-9);
      }
    }),
  );
});

it('growing by nothing changes nothing', () => {
  fc.assert(
    fc.property(polygon, ({ corners }) => {
      expect(grown(corners, 0)).toEqual(corners);
    }),
  );
});
