import { describe, expect, it } from 'vitest';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { nearestSwing, swingsOf } from '../../src/clearance/swing.ts';
import { vec } from '../../src/geometry/vector.ts';
import type { Cymbal } from '../../src/layout/pieces/cymbal.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { seededKits } from '../support/randomKit.ts';
import { rod, startingKit, startingKits } from './kits.ts';

/** A level cymbal of 500 mm, hung over the origin 1 m up. */
const crash: Cymbal = {
  kind: 'crash',
  id: 'crash',
  name: 'Crash',
  x: 0,
  y: 0,
  z: 1000,
  tilt: 0,
  tiltToward: 0,
  hands: 'none',
  diameter: 500,
  support: { kind: 'legs', overhang: 0, turn: 0 },
};
const everything = { limit: Number.POSITIVE_INFINITY, tolerance: 0.05 };
const [sin, cos] = [Math.sin(Math.PI / 9), Math.cos(Math.PI / 9)];

describe('rule W1: cymbals swing 20 degrees either way about their centre', () => {
  it('crashes, rides, splashes and chinas swing; hi-hats and drums do not', () => {
    for (const { player, pieces } of [...startingKits, ...seededKits(40, 61)]) {
      const swinging = pieces.filter(({ kind }) =>
        ['crash', 'ride', 'splash', 'china'].includes(kind),
      );
      expect(swingsOf(pieces).map(({ cymbal }) => cymbal)).toEqual(swinging.map(({ id }) => id));
      const oracle = oracleMotion(player, pieces).swings.map(({ cymbal }) => cymbal);
      expect(oracle).toEqual(swinging.map(({ id }) => id));
    }
    expect(startingKit('large-kit').pieces.some(({ kind }) => kind === 'hiHat')).toBe(true);
  });

  it.each([
    // Where the swung edge points: 250 mm out along 20 degrees.
    ['in line with the highest edge', vec(300 * cos, 0, 1000 + 300 * sin), 50],
    ['beside it, level', vec(0, -290, 1000), 40],
    ['over its centre', vec(0, 0, 1080), 80 * cos],
    [
      'over its bow: square to where it swings to',
      vec(100 * cos - 30 * sin, 0, 1000 + 100 * sin + 30 * cos),
      30,
    ],
  ])('a ball of 10 mm %s', (_, at, gap) => {
    const found = nearestSwing(swingsOf([crash]), rod(at, at, 10), everything);
    expect(found?.clearance).toBeCloseTo(gap - 10, 6);
    expect(found?.swing.cymbal).toBe('crash');
  });

  it('what stands within the swing is struck, whether or not a hand plays the cymbal', () => {
    const { player } = startingKit('four-piece-jazz');
    const boom = rod(vec(150, -600, 1010), vec(150, 600, 1010), 9);
    const { clearance, nearest } = reachOf(motionOf(player, [crash]), { solids: boom });
    expect(clearance).toBeLessThan(0);
    expect(nearest?.movement).toEqual({ kind: 'swing', cymbal: 'crash' });
    expect(nearest?.part).toBe('cymbal');
  });

  it('the nearest of all solids and cymbals is found', () => {
    for (const { pieces, ...layout } of seededKits(30, 62)) {
      const swings = swingsOf(pieces);
      for (const { solids } of buildRig({ ...layout, pieces }).mics) {
        const found = nearestSwing(swings, solids, everything);
        const each = swings.flatMap((swing) =>
          solids.map((solid) => nearestSwing([swing], [solid], everything)?.clearance ?? Infinity),
        );
        const least = Math.min(Number.POSITIVE_INFINITY, ...each);
        if (!found) expect(each).toEqual([]);
        else expect(Math.abs(found.clearance - least)).toBeLessThanOrEqual(0.05);
      }
    }
  });
});
