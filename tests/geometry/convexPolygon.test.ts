import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ConvexPolygon,
  convexHull,
  isInside,
  overlaps,
  passesThrough,
} from '../../src/geometry/convexPolygon.ts';
import { leftOf } from '../../src/geometry/orientation.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { planPoint, polygon, shareInside } from './planScenes.ts';

const square = hull([
  { x: 0, y: 0 },
  { x: 2, y: 0 },
  { x: 2, y: 2 },
  { x: 0, y: 2 },
]);

describe('the smallest convex polygon', () => {
  it('holds every point, turns left at every corner, and its corners are among the points', () => {
    fc.assert(
      fc.property(fc.array(planPoint, { minLength: 1, maxLength: 12 }), (points) => {
        const found = convexHull(points);
        if (!found) {
          const [a] = points;
          const b = points.find((p) => a && (p.x !== a.x || p.y !== a.y));
          expect(a && b ? points.every((p) => leftOf(a, b, p) === 0) : true).toBe(true);
          return;
        }
        for (const [a, b, c] of turns(found.corners)) {
          expect(leftOf(a, b, c)).toBeGreaterThan(0);
          expect(points).toContain(b);
          expect(points.every((p) => leftOf(a, b, p) >= 0)).toBe(true);
        }
      }),
    );
  });

  it('is none for points on one line', () => {
    expect(convexHull([])).toBeUndefined();
    expect(
      convexHull([
        { x: 0, y: 0 },
        { x: 1, y: 2 },
        { x: 2, y: 4 },
        { x: 1, y: 2 },
      ]),
    ).toBeUndefined();
  });
});

describe('passing through a polygon', () => {
  it('is having some length inside, by clipping in plain arithmetic', () => {
    fc.assert(
      fc.property(polygon, planPoint, planPoint, (shape, a, b) => {
        fc.pre(a.x !== b.x || a.y !== b.y);
        expect(passesThrough(shape, a, b)).toBe(shareInside(shape, a, b) > 1e-12);
      }),
      { numRuns: 3000 },
    );
  });

  it.each<[string, Vec2, Vec2, boolean]>([
    ['along an edge', { x: -1, y: 0 }, { x: 3, y: 0 }, false],
    ['along half an edge', { x: 0.5, y: 2 }, { x: 1.5, y: 2 }, false],
    ['touching a corner', { x: -1, y: 1 }, { x: 1, y: -1 }, false],
    ['ending on an edge', { x: -3, y: 1 }, { x: 0, y: 1 }, false],
    ['from corner to corner across', { x: 0, y: 0 }, { x: 2, y: 2 }, true],
    ['from an edge inward', { x: 0, y: 1 }, { x: 1, y: 1 }, true],
    ['a point inside', { x: 1, y: 1 }, { x: 1, y: 1 }, true],
    ['a point on the outline', { x: 2, y: 1 }, { x: 2, y: 1 }, false],
    ['past it on its own line', { x: 3, y: 3 }, { x: 5, y: 5 }, false],
  ])('%s', (_, a, b, expected) => {
    expect(passesThrough(square, a, b)).toBe(expected);
    expect(passesThrough(square, b, a)).toBe(expected);
  });
});

it('inside is strictly inside', () => {
  expect(isInside(square, { x: 1, y: 1 })).toBe(true);
  expect(isInside(square, { x: 0, y: 1 })).toBe(false);
  expect(isInside(square, { x: 2, y: 2 })).toBe(false);
  expect(isInside(square, { x: 3, y: 1 })).toBe(false);
});

it('two polygons overlap when an edge of one passes through the other or one holds the other', () => {
  fc.assert(
    fc.property(polygon, polygon, (p, q) => {
      const edgesPass = (s: ConvexPolygon, t: ConvexPolygon): boolean =>
        turns(s.corners).some(([a, b]) => passesThrough(t, a, b));
      // Two equal polygons have no edge inside each other: then their middles decide.
      const middle = {
        x: p.corners.reduce((sum, c) => sum + c.x, 0) / p.corners.length,
        y: p.corners.reduce((sum, c) => sum + c.y, 0) / p.corners.length,
      };
      const expected = edgesPass(p, q) || edgesPass(q, p) || isInside(q, middle);
      expect(overlaps(p, q)).toBe(expected);
      expect(overlaps(q, p)).toBe(expected);
    }),
    { numRuns: 1000 },
  );
});

function turns(corners: readonly Vec2[]): [Vec2, Vec2, Vec2][] {
  return corners.map((b, i) => [corners.at(i - 1) ?? b, b, corners[(i + 1) % corners.length] ?? b]);
}

function hull(points: readonly Vec2[]): ConvexPolygon {
  const found = convexHull(points);
  if (!found) throw new Error('three points that are not on one line were expected');
  return found;
}
