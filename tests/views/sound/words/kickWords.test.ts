import { describe, expect, it } from 'vitest';
import {
  batterWords,
  kickPlaceWords,
  shakerWords,
} from '../../../../src/views/sound/words/kickWords.ts';
import { kit } from '../sampleSound.ts';

const mic = { mic: 'a', place: 'inside', depth: 180, toBatterHead: 220, toBeater: 231 } as const;

describe('kick mics in words', () => {
  it('says how deep and on which side', () => {
    expect(kickPlaceWords(mic, true, 'mm')).toBe('Inside, 180 mm behind the port');
    expect(kickPlaceWords({ ...mic, place: 'front', depth: -90 }, false, 'mm')).toBe(
      'Outside, 90 mm before the front head',
    );
    expect(kickPlaceWords({ ...mic, place: 'behind' }, true, 'mm')).toBe('On the beater’s side');
    expect(batterWords(mic, 'mm')).toBe(
      '220 mm to the batter head, 231 mm to where the beater strikes.',
    );
  });

  it('advises a split for the seat shaker, and says by how much inputs are short', () => {
    const mics = (count: number) => kit.mics.slice(0, count);
    const box = { ...kit.box, inputs: 8 };
    expect(shakerWords({ mics: mics(7), box })).toMatch(/split.*1 input is left on the box\.$/);
    expect(shakerWords({ mics: mics(8), box })).toMatch(/8 inputs and 8 mics: no input is left/);
    expect(shakerWords({ mics: mics(10), box })).toMatch(/8 inputs and 10 mics: 2 inputs short/);
  });
});
