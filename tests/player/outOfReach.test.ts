import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { outOfReach } from '../../src/player/outOfReach.ts';
import { average, levelDrum } from './arms.ts';

describe('rule A2: out of reach', () => {
  /** A drum straight ahead of the right shoulder whose grip, at contact, is level with the shoulder and this far from it. */
  const ahead = (grip: number) => {
    const shoulderX = (-45.734 + 0.259529 * 1750) / 2;
    const shoulderZ = 500 + 77.034 + 0.299129 * 1750;
    const [cos, sin] = [Math.cos(Math.PI / 18), Math.sin(Math.PI / 18)];
    return {
      ...levelDrum(shoulderX, grip + 296 * cos, shoulderZ - 296 * sin),
      hands: 'right' as const,
    };
  };
  // Links 334.4 + 327.7 mm (source: the published lines, tests/player/body.test.ts).
  const links = -11.87 + 0.197879 * 1750 + (-52.923 + 0.182055 * 1750) + (15.348 + 0.026655 * 1750);
  const most = 0.98 * links + 200;

  it('a piece whose contact and full stroke the leaning arm reaches is not reported', () => {
    expect(outOfReach(average, [ahead(most - 120)])).toEqual([]);
  });

  it('is the larger of what contact and full stroke lack, in mm, for the hand that plays it', () => {
    const [found, ...rest] = outOfReach(average, [ahead(most + 50)]);
    expect(rest).toEqual([]);
    expect(found).toMatchObject({ piece: 'snare', side: 'right' });
    // The full stroke is 305/3 mm higher: farther from a level arm.
    expect(found?.beyond).toBeCloseTo(Math.hypot(most + 50, 305 / 3) - most, 6);
  });

  it('hands that do not play a piece are not asked', () => {
    const far = levelDrum(0, 3000, 700);
    const sides = (hands: 'both' | 'lead' | 'left' | 'none') =>
      outOfReach(average, [{ ...far, hands }]).map(({ side }) => side);
    expect(sides('both')).toEqual(['right', 'left']);
    expect(sides('lead')).toEqual(['right']);
    expect(sides('left')).toEqual(['left']);
    expect(sides('none')).toEqual([]);
  });

  it('an average player reaches all of every starting kit', () => {
    for (const kit of STARTING_KITS) {
      const { player, pieces } = kit.make(kit.key);
      expect(outOfReach(player, pieces), kit.name).toEqual([]);
    }
  });
});
