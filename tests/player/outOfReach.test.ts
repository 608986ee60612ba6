import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { Arm } from '../../src/player/arm.ts';
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

/**
 * Source: straight arms from the acromion to the centre of the grip as they were measured, person by person, in the public data of the
 * 2012 survey (tests/fixtures/reference/values.json), at the mean statures of the same people. The model adds links of regression lines
 * instead. 4 mm: measured medians lie up to 2.5 mm off the means, and one line for both sexes up to 2 mm off either's.
 */
describe('rule A2: reach against measured straight arms', () => {
  const values: readonly { readonly id: string; readonly value: unknown }[] = JSON.parse(
    readFileSync(new URL('../fixtures/reference/values.json', import.meta.url), 'utf8'),
  );
  const measured = (who: 'male' | 'female', percentile: 'p5' | 'p50' | 'p95'): number =>
    Number(
      values.find(({ id }) => id === `ansur2.DERIVED_acromion_to_gripcentre.${who}.${percentile}`)
        ?.value,
    );
  const MEAN_STATURE = { male: 1756.2, female: 1628.5 };

  /** How far beyond reach a piece is said to be whose grip is this far ahead of the shoulder, for someone who keeps the trunk still and plays taps. */
  function beyond(who: 'male' | 'female', grip: number): number {
    const stature = MEAN_STATURE[who];
    const player = { ...average, stature, lean: 0, strokeHeight: 20 };
    const { shoulderX, shoulderZ } = new Arm(player);
    const [ahead, down] = [296 * Math.cos(Math.PI / 18), 296 * Math.sin(Math.PI / 18)];
    const drum = {
      ...levelDrum(shoulderX, grip + ahead, shoulderZ - down),
      hands: 'right' as const,
    };
    return outOfReach(player, [drum])[0]?.beyond ?? 0;
  }

  it.each(['male', 'female'] as const)(
    '%s: reach ends at 0.98 of a straight arm, within 4 mm',
    (who) => {
      const arm = measured(who, 'p50');
      expect(arm).toBeGreaterThan(500);
      expect(beyond(who, 0.98 * arm - 4)).toBe(0);
      expect(Math.abs(beyond(who, arm + 100) - (0.02 * arm + 100))).toBeLessThan(4);
    },
  );

  it.each(['male', 'female'] as const)(
    '%s: what no arm of 19 in 20 reaches is out of reach, what all of them reach is not',
    (who) => {
      expect(beyond(who, measured(who, 'p95'))).toBeGreaterThan(0);
      expect(beyond(who, 0.98 * measured(who, 'p5'))).toBe(0);
    },
  );
});
