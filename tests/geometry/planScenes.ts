import fc from 'fast-check';
import { type ConvexPolygon, convexHull } from '../../src/geometry/convexPolygon.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';

/** Points on a coarse grid, so that corners meet, lines run along edges and three points lie on one line often. */
const gridPoint = fc.record({
  x: fc.integer({ min: -12, max: 12 }),
  y: fc.integer({ min: -12, max: 12 }),
});
/** Fine steps of 1/1024: the plain arithmetic of the checks below is then exact as well. */
const fineStep = fc.integer({ min: -12 * 1024, max: 12 * 1024 }).map((n) => n / 1024);
const finePoint = fc.record({ x: fineStep, y: fineStep });
export const planPoint: fc.Arbitrary<Vec2> = fc.oneof(gridPoint, finePoint);

/** A convex polygon of 3 to 6 corners, at most 8 wide. */
export const polygon: fc.Arbitrary<ConvexPolygon> = fc
  .record({
    centre: planPoint,
    offsets: fc.array(
      fc.record({ x: fc.integer({ min: -4, max: 4 }), y: fc.integer({ min: -4, max: 4 }) }),
      {
        minLength: 3,
        maxLength: 6,
      },
    ),
  })
  .map(({ centre, offsets }) =>
    convexHull(offsets.map((o) => ({ x: centre.x + o.x, y: centre.y + o.y }))),
  )
  .filter((hull) => hull !== undefined);

/** A few obstacles, overlapping or not. */
export const obstacles = (most: number): fc.Arbitrary<ConvexPolygon[]> =>
  fc.array(polygon, { maxLength: most });

/** A turn about the origin, then a shift; `mirror` swaps left and right first. */
export interface Motion {
  readonly turn: number;
  readonly dx: number;
  readonly dy: number;
  readonly mirror: boolean;
}

export const motion: fc.Arbitrary<Motion> = fc.record({
  turn: fc.double({ min: -7, max: 7, noNaN: true }),
  dx: fc.double({ min: -100, max: 100, noNaN: true }),
  dy: fc.double({ min: -100, max: 100, noNaN: true }),
  mirror: fc.boolean(),
});

export const moved = ({ turn, dx, dy, mirror }: Motion, p: Vec2): Vec2 => {
  const x = mirror ? -p.x : p.x;
  return {
    x: x * Math.cos(turn) - p.y * Math.sin(turn) + dx,
    y: x * Math.sin(turn) + p.y * Math.cos(turn) + dy,
  };
};

/**
 * How much of the segment from a to b lies inside the polygon, as a share of its length, by clipping it with one edge after
 * the other in plain arithmetic: an independent check of the exact tests.
 */
export function shareInside({ corners }: ConvexPolygon, a: Vec2, b: Vec2): number {
  let low = 0;
  let high = 1;
  for (const [i, p] of corners.entries()) {
    const q = corners[(i + 1) % corners.length] ?? p;
    const atA = (q.x - p.x) * (a.y - p.y) - (q.y - p.y) * (a.x - p.x);
    const atB = (q.x - p.x) * (b.y - p.y) - (q.y - p.y) * (b.x - p.x);
    if (atA <= 1e-9 && atB <= 1e-9) return 0;
    if (atA < 0) low = Math.max(low, atA / (atA - atB));
    if (atB < 0) high = Math.min(high, atA / (atA - atB));
  }
  return Math.max(0, high - low);
}
