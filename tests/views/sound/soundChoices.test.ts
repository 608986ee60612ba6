import { describe, expect, it } from 'vitest';
import { USUAL_SOUND } from '../../../src/report/sound.ts';
import { drumKey, usualSoundPreferences } from '../../../src/session/soundPreferences.ts';
import { soundChoices } from '../../../src/views/sound/soundChoices.ts';

const kit = (style: 'rock' | 'jazz') => ({ id: 'kit', patch: { style } });

describe('what a layout’s sound is computed with', () => {
  it('is as usual while the user said nothing', () => {
    expect(soundChoices(usualSoundPreferences, kit('rock'), USUAL_SOUND)).toEqual(USUAL_SOUND);
  });

  it('takes the layout’s style, what the user said, and fundamentals of this layout alone', () => {
    const said = {
      stageWash: 80,
      shellLoss: 12,
      levels: { ride: 101 },
      fundamentals: { [drumKey('kit', 'snare')]: 205, [drumKey('kit2', 'snare')]: 150 },
    };
    expect(soundChoices(said, kit('jazz'), USUAL_SOUND)).toEqual({
      ...USUAL_SOUND,
      style: 'jazz',
      stageWash: 80,
      shellLoss: 12,
      levels: { ...USUAL_SOUND.levels, ride: 101 },
      fundamentals: { snare: 205 },
    });
  });
});
