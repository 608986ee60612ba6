import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Capsule } from '../../src/geometry/capsule.ts';
import { capsuleToCylinder } from '../../src/geometry/capsuleContact.ts';
import type { Cylinder } from '../../src/geometry/cylinder.ts';
import { cylinderOverlap } from '../../src/geometry/cylinderOverlap.ts';
import {
  boundsOfLifted,
  capsuleToLifted,
  type LiftedCylinder,
  liftedOverlap,
} from '../../src/geometry/liftedCylinder.ts';
import { along, vec } from '../../src/geometry/vector.ts';
import {
  cylinderAlong,
  direction,
  outsideCylinder,
  pointWithin,
  tenths,
  UP,
} from './axialSolids.ts';

const cylinder = cylinderAlong(fc.oneof(fc.constant(UP), direction));
const lifted: fc.Arbitrary<LiftedCylinder> = fc.record({ cylinder, rise: tenths(0, 400) });
const capsule: fc.Arbitrary<Capsule> = fc.record({
  a: pointWithin(500),
  b: pointWithin(500),
  radius: tenths(3, 30),
});

const STEPS = 400;
/** The cylinder at evenly spread heights of its way. */
const heights = ({ cylinder: start, rise }: LiftedCylinder): readonly Cylinder[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => ({
    ...start,
    centre: along(start.centre, UP, (rise * i) / STEPS),
  }));
const stepOf = ({ rise }: LiftedCylinder): number => rise / STEPS;

describe('capsuleToLifted', () => {
  it('is the least gap over all heights of the way', () => {
    fc.assert(
      fc.property(lifted, capsule, (way, rod) => {
        const { gap } = capsuleToLifted(rod, way);
        const sampled = Math.min(...heights(way).map((one) => capsuleToCylinder(rod, one).gap));
        expect(gap).toBeLessThanOrEqual(sampled + 1e-3);
        expect(gap).toBeGreaterThanOrEqual(sampled - stepOf(way) - 1e-3);
      }),
      { numRuns: 60 },
    );
  });

  it('names a point of the capsule’s axis that is as near to the cylinder somewhere on its way', () => {
    fc.assert(
      fc.property(lifted, capsule, (way, rod) => {
        const { gap, at } = capsuleToLifted(rod, way);
        if (gap <= 0) return;
        const sampled = Math.min(...heights(way).map((one) => outsideCylinder(at, one)));
        expect(sampled - rod.radius).toBeGreaterThanOrEqual(gap - 1e-3);
        expect(sampled - rod.radius).toBeLessThanOrEqual(gap + stepOf(way) + 1e-3);
      }),
      { numRuns: 60 },
    );
  });

  it('is the still cylinder’s without a way, and never grows with a longer one', () => {
    fc.assert(
      fc.property(lifted, capsule, (way, rod) => {
        const still = capsuleToCylinder(rod, way.cylinder).gap;
        expect(capsuleToLifted(rod, { ...way, rise: 0 }).gap).toBeCloseTo(still, 3);
        const longer = { ...way, rise: way.rise + 100 };
        expect(capsuleToLifted(rod, longer).gap).toBeLessThanOrEqual(
          capsuleToLifted(rod, way).gap + 1e-3,
        );
      }),
    );
  });
});

describe('liftedOverlap', () => {
  it('finds what overlaps at some height, and nothing else', () => {
    fc.assert(
      fc.property(lifted, cylinder, (way, other) => {
        const some = heights(way).some((one) => cylinderOverlap(one, other) !== undefined);
        const found = liftedOverlap(way, other);
        if (some) expect(found).toBeDefined();
        // Between two heights a touch can be missed by sampling, but never a deep one.
        else expect(found?.depth ?? 0).toBeLessThanOrEqual(stepOf(way) + 0.2);
      }),
      { numRuns: 40 },
    );
  });

  it('of two upright cylinders is the least of the ways out, worked by hand', () => {
    const drum: Cylinder = { centre: vec(0, 0, 100), axis: UP, radius: 100, halfHeight: 50 };
    const disc: Cylinder = { centre: vec(150, 0, 260), axis: UP, radius: 80, halfHeight: 10 };
    // 30 mm over each other on the plan; the top of the drum comes to 300 mm, the disc begins at 250 mm.
    expect(liftedOverlap({ cylinder: drum, rise: 150 }, disc)?.depth).toBeCloseTo(30, 0);
    expect(liftedOverlap({ cylinder: drum, rise: 110 }, disc)?.depth).toBeCloseTo(10, 0);
    expect(liftedOverlap({ cylinder: drum, rise: 99 }, disc)).toBeUndefined();
  });
});

describe('boundsOfLifted', () => {
  it('reaches as much higher as the way is long', () => {
    fc.assert(
      fc.property(lifted, (way) => {
        const [start, whole] = [boundsOfLifted({ ...way, rise: 0 }), boundsOfLifted(way)];
        expect(whole.low).toEqual(start.low);
        expect(whole.high).toEqual({ ...start.high, z: start.high.z + way.rise });
      }),
    );
  });
});
