import RAPIER from '@dimforge/rapier3d-compat';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Capsule } from '../../src/geometry/capsule.ts';
import {
  capsuleDistance,
  closestBetweenSegments,
  type Segment,
  SegmentGap,
} from '../../src/geometry/segments.ts';
import {
  add,
  along,
  cross,
  distance,
  dot,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { segmentsApart } from '../support/segmentsOracle.ts';

const coordinate = fc.oneof(
  fc.integer({ min: -3, max: 3 }).map((n) => n * 100),
  fc.double({ min: -1000, max: 1000, noNaN: true }),
);
const point = fc.tuple(coordinate, coordinate, coordinate).map(([x, y, z]) => vec(x, y, z));
/** Segments of all sorts, some of no length. */
const segment: fc.Arbitrary<Segment> = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(point, point) },
  { weight: 1, arbitrary: point.map((p): Segment => [p, p]) },
);
/** Pairs of segments, some parallel or nearly so, some on one line. */
const pair: fc.Arbitrary<readonly [Segment, Segment]> = fc.oneof(
  { weight: 3, arbitrary: fc.tuple(segment, segment) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        segment,
        point,
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.constantFrom(0, 1e-9, 1e-5),
      )
      .map(([first, from, k, off]): readonly [Segment, Segment] => {
        const way = scale(subtract(first[1], first[0]), k);
        return [first, [from, add(add(from, way), scale(vec(1, -2, 3), off * 100))]];
      }),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        segment,
        fc.double({ min: -2, max: 3, noNaN: true }),
        fc.double({ min: -2, max: 3, noNaN: true }),
      )
      .map(([first, s, t]): readonly [Segment, Segment] => {
        const way = subtract(first[1], first[0]);
        return [first, [along(first[0], way, s), along(first[0], way, t)]];
      }),
  },
);
const radius = fc.double({ min: 1, max: 150, noNaN: true });

/** Nearly parallel segments are nearest nearly everywhere: where, is the root of a rounding error, and the distance off by this. */
const ROUNDING = 5e-3;
const apart = (p: Segment, q: Segment): number => closestBetweenSegments(p, q).distance;
const row = ([a, b]: Segment): Float64Array => Float64Array.of(a.x, a.y, a.z, b.x, b.y, b.z);

describe('the distance between two segments, worked by hand', () => {
  it('crossing segments 3 apart in y and 4 in z are 5 apart', () => {
    const first: Segment = [vec(-10, 0, 0), vec(10, 0, 0)];
    // Parallel to the first: everywhere 5 away where they overlap.
    expect(apart(first, [vec(-5, 3, 4), vec(20, 3, 4)])).toBe(5);
    // Across it, in the direction square to (0, 3, 4).
    const across = vec(0, 4, -3);
    const over = vec(0, 3, 4);
    const second: Segment = [along(over, across, -2), along(over, across, 2)];
    expect(apart(first, second)).toBeCloseTo(5, 12);
    const met = closestBetweenSegments(first, second);
    expect(distance(met.onFirst, vec(0, 0, 0))).toBeLessThan(1e-12);
    expect(distance(met.onSecond, over)).toBeLessThan(1e-12);
  });

  it('from end to end, on one line, from a point', () => {
    expect(apart([vec(0, 0, 0), vec(1, 0, 0)], [vec(4, 4, 0), vec(9, 4, 0)])).toBe(5);
    expect(apart([vec(0, 0, 0), vec(1, 0, 0)], [vec(3, 0, 0), vec(9, 0, 0)])).toBe(2);
    expect(apart([vec(0, 0, 0), vec(4, 0, 0)], [vec(3, 0, 0), vec(9, 0, 0)])).toBe(0);
    expect(apart([vec(2, 3, 4), vec(2, 3, 4)], [vec(0, 0, 0), vec(9, 0, 0)])).toBe(5);
    expect(apart([vec(0, 0, 0), vec(9, 0, 0)], [vec(2, 3, 4), vec(2, 3, 4)])).toBe(5);
    expect(apart([vec(0, 0, 0), vec(0, 0, 0)], [vec(200, 300, 600), vec(200, 300, 600)])).toBe(700);
    expect(apart([vec(1, 1, 1), vec(1, 1, 1)], [vec(1, 1, 1), vec(1, 1, 1)])).toBe(0);
  });

  it('segments that cross touch', () => {
    expect(apart([vec(-1, 0, 0), vec(1, 0, 0)], [vec(0, -1, 0), vec(0, 1, 0)])).toBe(0);
  });
});

describe('the distance between two segments', () => {
  it('is that of another method: common perpendicular or ends', () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const expected = segmentsApart(row(p), 0, { rows: row(q), from: 0, to: 3 });
        expect(Math.abs(apart(p, q) - expected)).toBeLessThan(ROUNDING);
      }),
      { numRuns: 3000 },
    );
  });

  it('is that of the other method to a millionth of a mm where they are not parallel', () => {
    fc.assert(
      fc.property(segment, segment, (p, q) => {
        const [u, v] = [subtract(p[1], p[0]), subtract(q[1], q[0])];
        fc.pre(dot(cross(u, v), cross(u, v)) >= 1e-4 * dot(u, u) * dot(v, v));
        const expected = segmentsApart(row(p), 0, { rows: row(q), from: 0, to: 3 });
        expect(Math.abs(apart(p, q) - expected)).toBeLessThan(1e-6);
      }),
      { numRuns: 2000 },
    );
  });

  it('is that between the two points it names, which lie on the segments', () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const { onFirst, onSecond, distance: found } = closestBetweenSegments(p, q);
        expect(distance(onFirst, onSecond)).toBeCloseTo(found, 6);
        expect(apart([onFirst, onFirst], p)).toBeLessThan(1e-6);
        expect(apart([onSecond, onSecond], q)).toBeLessThan(1e-6);
      }),
    );
  });

  it('is no more than between any two of their points', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(pair, share, share, ([p, q], s, t) => {
        const one = along(p[0], subtract(p[1], p[0]), s);
        const other = along(q[0], subtract(q[1], q[0]), t);
        expect(apart(p, q)).toBeLessThanOrEqual(distance(one, other) + ROUNDING);
      }),
      { numRuns: 1000 },
    );
  });

  it('is the same both ways round and from end to end', () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const found = apart(p, q);
        for (const other of [apart(q, p), apart([p[1], p[0]], q), apart(p, [q[1], q[0]])]) {
          expect(Math.abs(other - found)).toBeLessThan(ROUNDING);
        }
      }),
    );
  });

  it('is exactly the same in a mirror', () => {
    const flip = ({ x, y, z }: Vec3): Vec3 => vec(-x, y, z);
    fc.assert(
      fc.property(pair, ([p, q]) => {
        expect(apart([flip(p[0]), flip(p[1])], [flip(q[0]), flip(q[1])]) === apart(p, q)).toBe(
          true,
        );
      }),
    );
  });

  it('is the same after a rigid motion', () => {
    const angle = fc.double({ min: -7, max: 7, noNaN: true });
    fc.assert(
      fc.property(pair, point, point, angle, ([p, q], shift, about, turn) => {
        const axis = unit(about, vec(0, 0, 1));
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const moved = (v: Vec3): Vec3 =>
          add(
            shift,
            add(add(scale(v, c), scale(cross(axis, v), s)), scale(axis, dot(axis, v) * (1 - c))),
          );
        const found = apart([moved(p[0]), moved(p[1])], [moved(q[0]), moved(q[1])]);
        expect(Math.abs(found - apart(p, q))).toBeLessThan(ROUNDING);
      }),
    );
  });
});

describe('SegmentGap', () => {
  it('measures rows anywhere in a table, and holds where and which way', () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const table = new Float64Array(20);
        table.set(row(p), 3);
        table.set(row(q), 11);
        const gap = new SegmentGap();
        expect(gap.measure(table, 3, table, 11)).toBe(apart(p, q));
        const from = along(p[0], subtract(p[1], p[0]), gap.s);
        const to = along(q[0], subtract(q[1], q[0]), gap.t);
        expect(distance(add(from, vec(gap.dx, gap.dy, gap.dz)), to)).toBeLessThan(1e-6);
        for (const share of [gap.s, gap.t]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});

describe('capsuleDistance', () => {
  const capsule = fc.tuple(segment, radius).map(([[a, b], r]): Capsule => ({ a, b, radius: r }));
  beforeAll(() => RAPIER.init());

  it('is that of the axes less both radii, negative where they overlap', () => {
    const stick: Capsule = { a: vec(0, 0, 0), b: vec(400, 0, 0), radius: 7.25 };
    const boom: Capsule = { a: vec(100, -300, 60), b: vec(100, 300, 60), radius: 9 };
    expect(capsuleDistance(stick, boom)).toBeCloseTo(60 - 16.25, 9);
    expect(capsuleDistance(stick, { ...boom, radius: 70 })).toBeCloseTo(60 - 77.25, 9);
  });

  it('shrinks by exactly what a radius grows', () => {
    fc.assert(
      fc.property(capsule, capsule, radius, (p, q, more) => {
        const wider = { ...p, radius: p.radius + more };
        expect(capsuleDistance(wider, q)).toBeCloseTo(capsuleDistance(p, q) - more, 6);
        expect(Math.abs(capsuleDistance(q, p) - capsuleDistance(p, q))).toBeLessThan(ROUNDING);
      }),
    );
  });

  /** A capsule as the physics library has it: along y about its middle, then turned. */
  function body({ a, b, radius: r }: Capsule) {
    const way = subtract(b, a);
    const size = distance(a, b);
    const to = unit(way, vec(0, 1, 0));
    const axis = unit(cross(vec(0, 1, 0), to), vec(1, 0, 0));
    const half = Math.acos(Math.max(-1, Math.min(1, to.y))) / 2;
    const s = Math.sin(half);
    return {
      shape: size > 0 ? new RAPIER.Capsule(size / 2, r) : new RAPIER.Ball(r),
      at: along(a, way, 0.5),
      turn: { x: axis.x * s, y: axis.y * s, z: axis.z * s, w: Math.cos(half) },
    };
  }

  // Its own error grows with the gap: 0.4 mm up to 500 mm apart and 1.8 mm up to 3 m, both seen over 20,000 pairs in mm.
  it('is that of a general physics library up to 500 mm apart (rapier3d, single precision: 1 mm)', () => {
    const close = fc
      .tuple(capsule, capsule)
      .filter(([p, q]) => capsuleDistance(p, q) > 0.5 && capsuleDistance(p, q) < 500);
    fc.assert(
      fc.property(close, ([p, q]) => {
        const [one, other] = [body(p), body(q)];
        const contact = one.shape.contactShape(
          one.at,
          one.turn,
          other.shape,
          other.at,
          other.turn,
          1e5,
        );
        const found = contact?.distance ?? Number.NaN;
        expect(Math.abs(found - capsuleDistance(p, q))).toBeLessThan(1);
      }),
      { numRuns: 1000, endOnFailure: true },
    );
  });
});
