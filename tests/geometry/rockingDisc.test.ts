import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  nearestOnRockingDisc,
  type RockingDisc,
  rockingDiscDistance,
  segmentToRockingDisc,
} from '../../src/geometry/rockingDisc.ts';
import {
  add,
  along,
  cross,
  distance,
  dot,
  length,
  perpendicular,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';

const DEGREE = Math.PI / 180;
const number = (size: number) => fc.double({ min: -size, max: size, noNaN: true });
const point = fc.tuple(number(700), number(700), number(700)).map(([x, y, z]) => vec(x, y, z));
const direction = fc
  .tuple(number(1), number(1), number(1))
  .map(([x, y, z]) => unit(vec(x, y, z), vec(0, 0, 1)));
const rocking = (degrees: number) => ({
  sin: Math.sin(degrees * DEGREE),
  cos: Math.cos(degrees * DEGREE),
});
const disc: fc.Arbitrary<RockingDisc & { readonly degrees: number }> = fc
  .record({
    centre: point,
    normal: direction,
    radius: fc.double({ min: 50, max: 300, noNaN: true }),
    degrees: fc.double({ min: 0, max: 60, noNaN: true }),
  })
  .map((drawn) => ({ ...drawn, ...rocking(drawn.degrees) }));
/** A unit vector square to another. */
const anyAcross = (n: Vec3): Vec3 =>
  unit(perpendicular(Math.abs(n.x) < 0.7 ? vec(1, 0, 0) : vec(0, 1, 0), n), vec(0, 0, 1));
/** Points about the disc, where all its cases are. */
const near = fc
  .tuple(disc, number(1), number(1), fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }))
  .map(([d, out, lift, round]) => {
    const e = anyAcross(d.normal);
    const f = cross(d.normal, e);
    const aside = add(scale(e, Math.cos(round)), scale(f, Math.sin(round)));
    const beside = along(d.centre, aside, 1.6 * d.radius * out);
    return { disc: d, point: along(beside, d.normal, 1.6 * d.radius * lift) };
  });

/** Distance from a point to a flat disc. */
function flatDisc(centre: Vec3, normal: Vec3, radius: number, p: Vec3): number {
  const from = subtract(p, centre);
  const lift = dot(from, normal);
  const out = length(perpendicular(from, normal));
  return Math.hypot(lift, Math.max(0, out - radius));
}

/** Least distance to the disc in many of its positions: rocked about many axes, that square to the point's way among them. */
function sampled({ centre, normal, radius, degrees }: RockingDisc & { degrees: number }, p: Vec3) {
  const way = unit(perpendicular(subtract(p, centre), normal), anyAcross(normal));
  const first = unit(cross(normal, way), anyAcross(normal));
  const second = cross(normal, first);
  let least = Number.POSITIVE_INFINITY;
  for (const axisAt of [0, 30, 60, 90, 120, 150]) {
    const axis = add(
      scale(first, Math.cos(axisAt * DEGREE)),
      scale(second, Math.sin(axisAt * DEGREE)),
    );
    const steps = axisAt === 0 ? 400 : 20;
    for (let k = -steps; k <= steps; k++) {
      const angle = (degrees * DEGREE * k) / steps;
      const rocked = add(
        scale(normal, Math.cos(angle)),
        scale(cross(axis, normal), Math.sin(angle)),
      );
      least = Math.min(least, flatDisc(centre, rocked, radius, p));
    }
  }
  return least;
}

describe('rockingDiscDistance, worked by hand', () => {
  const level: RockingDisc = {
    centre: vec(0, 0, 1000),
    normal: vec(0, 0, 1),
    radius: 200,
    ...rocking(20),
  };
  it.each([
    ['beside it, in its plane', vec(250, 0, 1000), 50],
    ['below its edge at rest: outside the arc', vec(0, 300, 1000), 100],
    [
      'beyond the highest edge',
      vec(300 * Math.cos(20 * DEGREE), 0, 1000 + 300 * Math.sin(20 * DEGREE)),
      100,
    ],
    ['over its centre', vec(0, 0, 1100), 100 * Math.cos(20 * DEGREE)],
    ['under its centre', vec(0, 0, 900), 100 * Math.cos(20 * DEGREE)],
    ['inside, nearest to the arc', vec(190, 0, 1000), -10],
    ['inside, nearest to where it rocks to', vec(50, 0, 1000), -50 * Math.sin(20 * DEGREE)],
    ['its centre', vec(0, 0, 1000), 0],
  ])('%s', (_, p, expected) => {
    expect(rockingDiscDistance(level, p)).toBeCloseTo(expected, 9);
  });

  it('a disc that does not rock is flat', () => {
    fc.assert(
      fc.property(near, ({ disc: d, point: p }) => {
        const still = { ...d, ...rocking(0) };
        const flat = flatDisc(d.centre, d.normal, d.radius, p);
        expect(rockingDiscDistance(still, p)).toBeCloseTo(flat, 6);
      }),
    );
  });
});

describe('rockingDiscDistance', () => {
  it("is that to the nearest of the disc's positions, by sampling; not above 0 inside what it sweeps", () => {
    fc.assert(
      fc.property(near, ({ disc: d, point: p }) => {
        const found = rockingDiscDistance(d, p);
        const nearest = sampled(d, p);
        // A quarter of a step of the finest rocking, at the point's distance from the centre.
        const step = (d.degrees * DEGREE * distance(p, d.centre)) / 400;
        expect(Math.max(0, found)).toBeLessThanOrEqual(nearest + 1e-6);
        expect(Math.max(0, found)).toBeGreaterThanOrEqual(nearest - step - 1e-6);
      }),
      { numRuns: 400 },
    );
  });

  it('inside it is the way out: nothing nearer is outside, and something that far is', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(near, share, share, ({ disc: d, point: p }, up, out) => {
        const flat = unit(perpendicular(subtract(p, d.centre), d.normal), anyAcross(d.normal));
        const angle = (2 * up - 1) * d.degrees * DEGREE;
        const ray = add(scale(flat, Math.cos(angle)), scale(d.normal, Math.sin(angle)));
        const inside = along(d.centre, ray, out * d.radius);
        const depth = -rockingDiscDistance(d, inside);
        expect(depth).toBeGreaterThanOrEqual(-1e-9);
        const around = Array.from({ length: 360 }, (_, k) =>
          add(scale(flat, Math.cos(k * DEGREE)), scale(d.normal, Math.sin(k * DEGREE))),
        );
        const at = (size: number): number[] =>
          around.map((way) => rockingDiscDistance(d, along(inside, way, size)));
        expect(Math.max(...at(depth * 0.999))).toBeLessThanOrEqual(1e-6);
        expect(Math.max(...at(depth * 1.001 + 1e-5))).toBeGreaterThan(0);
      }),
    );
  });

  it('changes at most as fast as the point moves', () => {
    fc.assert(
      fc.property(
        near,
        direction,
        fc.double({ min: 0, max: 300, noNaN: true }),
        (at, way, size) => {
          const { disc: d, point: p } = at;
          const moved = rockingDiscDistance(d, along(p, way, size));
          expect(Math.abs(moved - rockingDiscDistance(d, p))).toBeLessThanOrEqual(size + 1e-6);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('is exactly the same in a mirror', () => {
    const flip = ({ x, y, z }: Vec3): Vec3 => vec(-x, y, z);
    fc.assert(
      fc.property(near, ({ disc: d, point: p }) => {
        const other = { ...d, centre: flip(d.centre), normal: flip(d.normal) };
        expect(rockingDiscDistance(other, flip(p)) === rockingDiscDistance(d, p)).toBe(true);
      }),
    );
  });
});

describe('nearestOnRockingDisc', () => {
  it('is a point of what the disc sweeps, as far away as the distance says', () => {
    fc.assert(
      fc.property(near, ({ disc: d, point: p }) => {
        const on = nearestOnRockingDisc(d, p);
        expect(rockingDiscDistance(d, on)).toBeLessThan(1e-3);
        expect(distance(on, p)).toBeCloseTo(Math.max(0, rockingDiscDistance(d, p)), 3);
      }),
      { numRuns: 1000 },
    );
  });

  it('is somewhere on the highest ring for a point over the centre', () => {
    const level = { centre: vec(0, 0, 0), normal: vec(0, 0, 1), radius: 200, ...rocking(20) };
    const on = nearestOnRockingDisc(level, vec(0, 0, 100));
    expect(distance(on, vec(0, 0, 100))).toBeCloseTo(100 * Math.cos(20 * DEGREE), 9);
  });
});

describe('segmentToRockingDisc', () => {
  const reach = fc.record({
    at: near,
    way: direction,
    size: fc.double({ min: 0, max: 900, noNaN: true }),
  });
  const everywhere = { limit: Number.POSITIVE_INFINITY, tolerance: 0.05 };
  const least = (d: RockingDisc, a: Vec3, b: Vec3): number => {
    const steps = 2000;
    return Math.min(
      ...Array.from({ length: steps + 1 }, (_, k) =>
        rockingDiscDistance(d, along(a, subtract(b, a), k / steps)),
      ),
    );
  };

  it('is at most its tolerance above the least of all points, and that of the point it names', () => {
    fc.assert(
      fc.property(reach, ({ at: { disc: d, point: p }, way, size }) => {
        const [a, b] = [along(p, way, -size / 3), along(p, way, (2 * size) / 3)];
        const found = segmentToRockingDisc(d, { a, b }, everywhere);
        if (!found) throw new Error('without a limit there is always a nearest point');
        expect(found.distance).toBeLessThanOrEqual(least(d, a, b) + 0.05);
        // No point lies nearer than a sample less half the step between them.
        expect(found.distance).toBeGreaterThanOrEqual(least(d, a, b) - size / 4000 - 1e-9);
        expect(rockingDiscDistance(d, found.point)).toBeCloseTo(found.distance, 9);
      }),
      { numRuns: 300 },
    );
  });

  it('says nothing only where nothing is below the limit, less its tolerance', () => {
    fc.assert(
      fc.property(reach, fc.double({ min: -50, max: 300, noNaN: true }), (drawn, limit) => {
        const { at, way, size } = drawn;
        const ends = { a: at.point, b: along(at.point, way, size) };
        const found = segmentToRockingDisc(at.disc, ends, { limit, tolerance: 0.05 });
        const all = segmentToRockingDisc(at.disc, ends, everywhere);
        if (!all) throw new Error('without a limit there is always a nearest point');
        if (found) {
          expect(found.distance).toBeLessThan(limit);
          expect(Math.abs(found.distance - all.distance)).toBeLessThanOrEqual(0.05);
        } else expect(all.distance).toBeGreaterThanOrEqual(limit - 0.1);
      }),
      { numRuns: 500 },
    );
  });
});
