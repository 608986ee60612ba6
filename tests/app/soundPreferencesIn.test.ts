import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soundPreferencesIn } from '../../src/app/soundPreferencesIn.ts';
import { usualSoundPreferences } from '../../src/session/soundPreferences.ts';

describe('sound preferences that were kept', () => {
  it('come back as they were', () => {
    const mine = {
      stageWash: 88,
      shellLoss: 14,
      levels: { kick: 110 },
      fundamentals: { 'kit/snare': 205 },
      lastAir: { temperature: 12, humidity: 80 },
      part: 'timing',
    };
    expect(soundPreferencesIn(JSON.parse(JSON.stringify(mine)))).toEqual(mine);
    expect(soundPreferencesIn({ ...mine, part: null }).part).toBeNull();
  });

  it('leave out what is not understood, one by one', () => {
    expect(
      soundPreferencesIn({
        stageWash: 900,
        shellLoss: -1,
        levels: { kick: 'loud', gong: 100, ride: 97 },
        fundamentals: { 'kit/snare': 5, 'kit/tom': 120, tom: 130 },
        lastAir: { temperature: 20 },
        part: 'everything',
      }),
    ).toEqual({
      ...usualSoundPreferences,
      levels: { ride: 97 },
      fundamentals: { 'kit/tom': 120 },
    });
  });

  it('are usual for anything else', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.integer(), fc.constant(null)), (kept) => {
        expect(soundPreferencesIn(kept)).toEqual(usualSoundPreferences);
      }),
    );
  });
});
