import { describe, expect, it } from 'vitest';
import { distance, vec } from '../../src/geometry/vector.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { momentOf, nearestMoment } from '../../src/report/moment.ts';
import { armAt, radiiOf, sweepOf } from '../../src/report/sweep.ts';

const layout = fivePieceOneRack('kit');
const report = createAnalyst()(layout);
/** Every mic that is nearest to a hand's move, with that move. */
const moved = report.clearances.flatMap(({ mic, clearance, verdict, nearest }) => {
  const placed = report.rig.mics.find((one) => one.mic.id === mic);
  if (!placed || !nearest || !('at' in nearest.movement)) return [];
  return [{ placed, clearance, verdict, nearest, movement: nearest.movement }];
});

describe('a moment of a move', () => {
  it('at the least clearance says what the clearance says, by at most its tolerance more', () => {
    expect(moved.length).toBeGreaterThan(3);
    for (const { placed, clearance, verdict, nearest, movement } of moved) {
      const moment = momentOf(layout, placed, nearest, movement.at);
      if (!moment) throw new Error('expected a moment');
      expect(moment.clearance).toBeGreaterThanOrEqual(clearance);
      expect(moment.clearance).toBeLessThan(clearance + 0.11);
      expect(moment.part).toBe(nearest.part);
      expect(moment.verdict).toBe(verdict);
      expect(distance(moment.onMic, nearest.onMic)).toBeLessThan(1e-6);
      expect(distance(moment.onMoving, nearest.onMoving)).toBeLessThan(1e-6);
    }
  });

  it('C1: is never nearer than the clearance, and its points are as far apart as it says', () => {
    for (const { placed, clearance, nearest } of moved) {
      for (let step = 0; step <= 40; step += 1) {
        const moment = momentOf(layout, placed, nearest, step / 40);
        if (!moment) throw new Error('expected a moment');
        expect(moment.clearance).toBeGreaterThanOrEqual(clearance - 1e-9);
        if (moment.clearance > 0) {
          expect(distance(moment.onMic, moment.onMoving)).toBeCloseTo(moment.clearance, 6);
        }
      }
    }
  });

  it('is none for what has no way', () => {
    const [placed] = report.rig.mics;
    if (!placed) throw new Error('expected a mic');
    const onMoving = vec(0, 0, 0);
    const leg = { kind: 'leg', foot: 'right', pedal: null } as const;
    const gone = [
      { kind: 'swing', cymbal: 'gone' },
      { kind: 'stroke', hand: 'right', on: 'gone', at: 0 },
    ] as const;
    for (const movement of [leg, ...gone]) {
      expect(momentOf(layout, placed, { movement, onMoving }, 0.5)).toBeNull();
    }
    expect(nearestMoment(layout, { movement: leg, onMoving })).toBeNull();
  });
});

describe('a moment of a swing', () => {
  const large = largeKit('kit');
  const all = createAnalyst()(large);
  const swung = all.clearances.flatMap(({ mic, clearance, verdict, nearest }) => {
    const placed = all.rig.mics.find((one) => one.mic.id === mic);
    if (!placed || nearest?.movement.kind !== 'swing') return [];
    return [{ placed, clearance, verdict, nearest }];
  });

  it('at the least clearance says what the clearance says, by at most its tolerance more', () => {
    expect(swung.length).toBeGreaterThan(0);
    for (const { placed, clearance, verdict, nearest } of swung) {
      expect(clearance).toBeGreaterThan(0);
      const moment = momentOf(large, placed, nearest, nearestMoment(large, nearest) ?? Number.NaN);
      if (!moment) throw new Error('expected a moment');
      expect(moment.clearance).toBeGreaterThanOrEqual(clearance);
      expect(moment.clearance).toBeLessThan(clearance + 0.11);
      expect(moment).toMatchObject({ part: 'cymbal', verdict, arm: null });
      expect(distance(moment.onMoving, nearest.onMoving)).toBeLessThan(0.2);
    }
  });

  it('W1: is never nearer than the clearance, and farther when it leans the other way', () => {
    for (const { placed, clearance, nearest } of swung) {
      for (let step = 0; step <= 40; step += 1) {
        const moment = momentOf(large, placed, nearest, step / 40);
        expect(moment?.clearance).toBeGreaterThanOrEqual(clearance);
      }
      const across = ((nearestMoment(large, nearest) ?? Number.NaN) + 0.5) % 1;
      expect(momentOf(large, placed, nearest, across)?.clearance).toBeGreaterThan(clearance + 5);
    }
  });
});

describe('a sweep', () => {
  it('passes through the arm of every moment, with the radii of the model (rules A1 and the stick’s)', () => {
    for (const { movement } of moved) {
      const sweep = sweepOf(layout, movement, 10);
      if (!sweep) throw new Error('expected a sweep');
      expect(sweep.hand).toBe(movement.hand);
      expect(sweep.positions).toHaveLength(11);
      expect(sweep.positions[3]).toEqual(armAt(layout, movement, 0.3));
      expect(sweep.radii).toEqual({
        stick: layout.player.stick.diameter / 2,
        hand: 45,
        forearm: 40,
      });
      expect(radiiOf(layout)).toEqual(sweep.radii);
    }
  });
});
