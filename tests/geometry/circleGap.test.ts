import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Circle, comesNearCircle, LEAST_STEP } from '../../src/geometry/circleGap.ts';
import { unit, type Vec3, vec } from '../../src/geometry/vector.ts';

const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
const point = fc.tuple(coordinate, coordinate, coordinate).map(([x, y, z]) => vec(x, y, z));
const circle: fc.Arbitrary<Circle> = fc.record({
  centre: point,
  normal: point.map((p) => unit(p, vec(0, 0, 1))),
  radius: fc.double({ min: 0, max: 250, noNaN: true }),
});

/** Points of the circle a degree apart, told by two directions square to its normal. */
function pointsOf({ centre, normal, radius }: Circle): readonly Vec3[] {
  const flat = Math.abs(normal.z) < 0.9 ? vec(0, 0, 1) : vec(1, 0, 0);
  const crossed = (p: Vec3, q: Vec3): Vec3 =>
    vec(p.y * q.z - p.z * q.y, p.z * q.x - p.x * q.z, p.x * q.y - p.y * q.x);
  const u = unit(crossed(normal, flat), flat);
  const v = crossed(normal, u);
  return Array.from({ length: 360 }, (_, degree) => {
    const [c, s] = [Math.cos((degree * Math.PI) / 180), Math.sin((degree * Math.PI) / 180)];
    return vec(
      centre.x + radius * (c * u.x + s * v.x),
      centre.y + radius * (c * u.y + s * v.y),
      centre.z + radius * (c * u.z + s * v.z),
    );
  });
}

/** By the points of both: never below the distance, and above by less than half a step along the circle and one along the segment. */
function sampledGap(round: Circle, a: Vec3, b: Vec3): number {
  const steps = 100;
  let least = Number.POSITIVE_INFINITY;
  for (const on of pointsOf(round)) {
    for (let k = 0; k <= steps; k++) {
      const t = k / steps;
      const gap = Math.hypot(
        a.x + t * (b.x - a.x) - on.x,
        a.y + t * (b.y - a.y) - on.y,
        a.z + t * (b.z - a.z) - on.z,
      );
      least = Math.min(least, gap);
    }
  }
  return least;
}

describe('whether a segment comes near a circle', () => {
  it('is so where points of both are as near, and never where they are farther by the steps between them and two more', () => {
    fc.assert(
      fc.property(circle, point, point, (round, a, b) => {
        const least = sampledGap(round, a, b);
        const row = Float64Array.of(a.x, a.y, a.z, b.x, b.y, b.z);
        const between =
          (Math.PI / 360) * round.radius + Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) / 200;
        expect(comesNearCircle(round, row, 0, least)).toBe(true);
        expect(comesNearCircle(round, row, 0, least - between - 2 * LEAST_STEP - 1e-6)).toBe(false);
      }),
      { numRuns: 100 },
    );
  });

  it('takes a segment of no length for a point', () => {
    const round = { centre: vec(0, 0, 0), normal: vec(0, 0, 1), radius: 100 };
    const row = Float64Array.of(130, 0, 40, 130, 0, 40);
    expect(comesNearCircle(round, row, 0, 50)).toBe(true);
    expect(comesNearCircle(round, row, 0, 47.9)).toBe(false);
  });
});
