import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dot, length } from '../../src/geometry/vector.ts';
import { rimDirection } from '../../src/rig/rimDirection.ts';
import { cosDeg, sinDeg, toDegrees, turnBetween } from '../../src/units/angle.ts';

const degrees = fc.integer({ min: 0, max: 359 });
const surface = (tilt: number, toward: number) => ({
  centre: { x: 0, y: 0, z: 700 },
  normal: { x: sinDeg(tilt) * cosDeg(toward), y: sinDeg(tilt) * sinDeg(toward), z: cosDeg(tilt) },
  radius: 150,
});

describe('rimDirection (M5)', () => {
  it('lies in the head, is a unit vector, and seen from above points to its angle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 89 }), degrees, degrees, (tilt, toward, angle) => {
        const head = surface(tilt, toward);
        const e = rimDirection(head, angle);
        expect(dot(e, head.normal)).toBeCloseTo(0, 12);
        expect(length(e)).toBeCloseTo(1, 12);
        expect(turnBetween(angle, toDegrees(Math.atan2(e.y, e.x)))).toBeCloseTo(0, 6);
      }),
    );
  });

  it('is exactly mirrored for a mirrored head and angle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90 }), degrees, degrees, (tilt, toward, angle) => {
        const here = rimDirection(surface(tilt, toward), angle);
        const there = rimDirection(surface(tilt, 180 - toward), 180 - angle);
        expect([there.x === -here.x, there.y === here.y, there.z === here.z]).toEqual([
          true,
          true,
          true,
        ]);
      }),
    );
  });

  it('is still a direction in the head where the head stands upright', () => {
    const e = rimDirection(surface(90, 270), 40);
    expect(length(e)).toBeCloseTo(1, 12);
    expect(dot(e, surface(90, 270).normal)).toBeCloseTo(0, 12);
  });
});
