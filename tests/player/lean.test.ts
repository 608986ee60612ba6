import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { along, distance, vec } from '../../src/geometry/vector.ts';
import { fivePieceTwoRacks } from '../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { playerSchema } from '../../src/layout/player.ts';
import { Arm } from '../../src/player/arm.ts';
import { outOfReach } from '../../src/player/outOfReach.ts';
import { average, elbowFor } from './arms.ts';

const AHEAD = vec(0, 1, 0);
const mostLean = fc.integer({ min: 0, max: 400 });

describe('rule A2: the trunk leans at most by the player’s own lean', () => {
  it('reaches farther by what it leans more, mm for mm', () => {
    fc.assert(
      fc.property(mostLean, fc.double({ min: 0, max: 600, noNaN: true }), (lean, more) => {
        const arm = new Arm({ ...average, lean });
        const far = arm.easy + more;
        const beyond = arm.beyond(arm.shoulderX, far, arm.shoulderZ);
        expect(beyond).toBeCloseTo(Math.max(0, more - lean), 6);
      }),
    );
  });

  it('moves the shoulder along by what is missing, then stays as at full stretch', () => {
    fc.assert(
      fc.property(mostLean, fc.double({ min: 0, max: 600, noNaN: true }), (lean, more) => {
        const arm = new Arm({ ...average, lean });
        const shoulder = vec(arm.shoulderX, 0, arm.shoulderZ);
        const elbow = elbowFor(arm, along(shoulder, AHEAD, arm.easy + more));
        const leaned = along(shoulder, AHEAD, Math.min(more, lean));
        expect(distance(elbow, leaned)).toBeCloseTo(arm.upper, 6);
        const still = elbowFor(new Arm({ ...average, lean: 0 }), along(shoulder, AHEAD, arm.easy));
        expect(distance(elbow, along(still, AHEAD, Math.min(more, lean)))).toBeCloseTo(0, 5);
      }),
    );
  });

  it('within the reach of the arm alone it makes no difference', () => {
    fc.assert(
      fc.property(mostLean, fc.double({ min: 150, max: 600, noNaN: true }), (lean, far) => {
        const [arm, usual] = [new Arm({ ...average, lean }), new Arm(average)];
        const grip = along(vec(arm.shoulderX, 0, arm.shoulderZ), AHEAD, far);
        expect(elbowFor(arm, grip)).toEqual(elbowFor(usual, grip));
      }),
    );
  });

  it('without a lean some of a usual kit is out of reach, with the most of it none', () => {
    const { pieces, player } = fivePieceTwoRacks('kit');
    const out = (lean: number) => outOfReach({ ...player, lean }, pieces).length;
    expect(out(0)).toBeGreaterThan(0);
    expect(out(400)).toBe(0);
  });

  it('is a number from 0 to 400 mm', () => {
    const { lean } = playerSchema.shape;
    expect([lean.minValue, lean.maxValue]).toEqual([0, 400]);
  });
});
