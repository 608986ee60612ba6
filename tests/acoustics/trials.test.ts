import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { closeChanges } from '../../src/acoustics/changes.ts';
import { TRIAL_STEP, type TrialMove } from '../../src/acoustics/trials.ts';
import { along, subtract, unit, vec } from '../../src/geometry/vector.ts';
import { aimMic, moveMicTip } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { toDegrees } from '../../src/units/angle.ts';
import { fivePiece } from '../rig/kits.ts';
import { heardIn, only, sourceIn } from './scenes.ts';

const acousticsOf = (layout: Layout) => createAcoustics()(layout, buildRig(layout));
const before = acousticsOf(fivePiece);
const hiHatMic = only(
  heardIn(fivePiece).listeners.find(({ placed }) => placed.mic.name === 'Hi-hat'),
);
const { id } = hiHatMic;
const { tip, axis } = hiHatMic.ear;

function layoutAfter(move: TrialMove): Layout {
  const to = (point: ReturnType<typeof vec>) => moveMicTip(fivePiece, id, point);
  const hat = sourceIn(heardIn(fivePiece).sources, 'hi-hat').struck;
  switch (move) {
    case 'nearer':
      return to(along(tip, axis, TRIAL_STEP));
    case 'farther':
      return to(along(tip, axis, -TRIAL_STEP));
    case 'up':
      return to(vec(tip.x, tip.y, tip.z + TRIAL_STEP));
    case 'towardCentre': {
      // The kit's hi-hat lies level.
      const level = vec(hat.centre.x - tip.x, hat.centre.y - tip.y, 0);
      return to(along(tip, unit(level, axis), TRIAL_STEP));
    }
    case 'aimAtCentre': {
      const way = unit(subtract(hat.centre, tip), axis);
      return aimMic(fivePiece, id, {
        azimuth: toDegrees(Math.atan2(way.y, way.x)),
        pitch: toDegrees(Math.asin(way.z)),
      });
    }
  }
}

describe('H26 trials', () => {
  const trials = only(before.close.find(({ mic }) => mic === id)).trials;

  it('tell what the same move of the layout then does', () => {
    expect(trials.map(({ move }) => move)).toEqual([
      'nearer',
      'farther',
      'up',
      'towardCentre',
      'aimAtCentre',
    ]);
    for (const { move, ...told } of trials) {
      const done = closeChanges(before, acousticsOf(layoutAfter(move))).find(
        ({ mic }) => mic === id,
      );
      expect(done?.level).toBeCloseTo(told.level, 4);
      expect(done?.isolation).toBeCloseTo(told.isolation, 4);
      expect(done?.proximity).toBeCloseTo(told.proximity, 4);
    }
  });

  it('nearer is louder and boomier, farther is neither, for every clip', () => {
    const clips = before.close
      .filter(({ head }) => head === 'batter')
      .filter(({ mic }) => fivePiece.mics.find((one) => one.id === mic)?.mount.kind === 'clip');
    expect(clips.length).toBeGreaterThan(2);
    for (const { trials: moves } of clips) {
      const of = (move: TrialMove) => only(moves.find((one) => one.move === move));
      expect(of('nearer').level).toBeGreaterThan(0);
      expect(of('nearer').proximity).toBeGreaterThan(0);
      expect(of('farther').level).toBeLessThan(0);
      expect(of('farther').proximity).toBeLessThan(0);
    }
  });
});
