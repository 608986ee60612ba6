import { describe, expect, it } from 'vitest';
import {
  balanceWords,
  enoughWords,
  heightsWords,
  spreadWords,
  washWords,
} from '../../../../src/views/sound/words/overheadWords.ts';
import { nameOf } from '../../../../src/views/words/nameOf.ts';
import { kit, sound } from '../sampleSound.ts';

describe('overheads in words', () => {
  it('names the loudest cymbal and the spread', () => {
    const { overheads } = sound;
    if (!overheads) throw new Error('expected overheads in the large kit');
    const said = spreadWords(overheads, kit);
    expect(said).toContain(nameOf(kit, overheads.together.loudest ?? ''));
    expect(said).toMatch(/^Cymbals within \d+\.\d dB/);
  });

  it('says wash over and under, and none', () => {
    expect(washWords(8.14)).toBe('8.1 dB over the stage wash');
    expect(washWords(-2)).toBe('2.0 dB under the stage wash');
    expect(washWords(Number.NEGATIVE_INFINITY)).toBe('no cymbals over the stage wash');
  });

  it('takes a balance under half a dB as even', () => {
    const [left, right] = [kit.mics[0]?.id ?? '', kit.mics[1]?.id ?? ''];
    const balance = (level: number) => balanceWords({ balance: { left, right, level } }, kit);
    expect(balance(0.4)).toBe('The snare is even between left and right.');
    expect(balance(1.4)).toBe(`The snare is 1.4 dB louder in ${nameOf(kit, right)}.`);
    expect(balance(-1.4)).toContain(nameOf(kit, left));
    expect(balanceWords({ balance: null }, kit)).toContain('needs two overheads');
  });

  it('says heights as one where they agree', () => {
    expect(heightsWords([620, 622], 'mm')).toBe('620 mm over the highest cymbal');
    expect(heightsWords([620, 700], 'mm')).toBe('620 mm to 700 mm over the highest cymbal');
    expect(enoughWords(1200, 'mm')).toContain('From 1200 mm');
    expect(enoughWords(null, 'mm')).toContain('fewer than two cymbals');
  });
});
