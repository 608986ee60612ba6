import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { swingsOf } from '../../src/clearance/swing.ts';
import { swingMoment, swungAt } from '../../src/clearance/swungAt.ts';
import { rockingDiscDistance } from '../../src/geometry/rockingDisc.ts';
import { dot, length, vec } from '../../src/geometry/vector.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { toDegrees } from '../../src/units/angle.ts';

const swings = swingsOf(fivePieceOneRack('kit').pieces);
const swing = fc.constantFrom(...swings);
const offset = fc.integer({ min: -400, max: 400 });

describe('a cymbal at one moment of its swing', () => {
  it('W1: lies still at both ends and half way, and is leaned by 20 degrees at a quarter and three quarters', () => {
    fc.assert(
      fc.property(swing, offset, offset, offset, (cymbal, x, y, z) => {
        const { centre, normal } = cymbal;
        const toward = vec(centre.x + x, centre.y + y, centre.z + z);
        const leanAt = (at: number): number => {
          const cos = dot(swungAt(cymbal, toward, at).normal, normal);
          return toDegrees(Math.acos(Math.min(1, cos)));
        };
        for (const at of [0, 0.5, 1]) expect(leanAt(at)).toBeCloseTo(0, 4);
        for (const at of [0.25, 0.75]) expect(leanAt(at)).toBeCloseTo(20, 6);
      }),
    );
  });

  it('W1: is nearest at the moment that is said, and then as near as all that the swing sweeps', () => {
    fc.assert(
      fc.property(swing, offset, offset, offset, (cymbal, x, y, z) => {
        const { centre } = cymbal;
        const point = vec(centre.x + x, centre.y + y, centre.z + z);
        const distanceAt = (at: number): number =>
          rockingDiscDistance(swungAt(cymbal, point, at), point);
        const least = Math.max(0, rockingDiscDistance(cymbal, point));
        expect(distanceAt(swingMoment(cymbal, point))).toBeCloseTo(least, 4);
        for (let step = 0; step <= 20; step += 1) {
          expect(distanceAt(step / 20)).toBeGreaterThanOrEqual(least - 1e-6);
        }
      }),
    );
  });

  it('W1: its edge goes first below, then above the plane on the side of what it swings toward', () => {
    for (const cymbal of swings) {
      const { centre, normal } = cymbal;
      const side = vec(centre.x + 300, centre.y, centre.z);
      const rise = (at: number): number => dot(swungAt(cymbal, side, at).normal, vec(1, 0, 0));
      expect(rise(0.25)).toBeGreaterThan(normal.x);
      expect(rise(0.75)).toBeLessThan(normal.x);
      expect(length(swungAt(cymbal, side, 0.3).normal)).toBeCloseTo(1, 9);
    }
  });
});
