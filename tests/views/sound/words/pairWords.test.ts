import { describe, expect, it } from 'vitest';
import {
  harmWords,
  pairsSummary,
  pairWords,
  rangeWords,
  ratioWords,
  reasonWords,
} from '../../../../src/views/sound/words/pairWords.ts';
import { first, kit, sound } from '../sampleSound.ts';

describe('pairs and filters in words', () => {
  const row = first(sound.pairs);

  it('says whether a pair keeps 3:1, and what is meant to be shared', () => {
    expect(ratioWords(3)).toBe('3.0:1, keeps 3:1');
    expect(ratioWords(2.4)).toBe('2.4:1, short of 3:1');
    const meant = 'Both are there for it: meant, but time it';
    expect(pairWords({ ...row, shared: true }, kit, 'mm')).toContain(meant);
    expect(pairWords({ ...row, shared: false }, kit, 'mm')).not.toContain(meant);
  });

  it('gives the harm from peak to dip, full where the levels are equal', () => {
    expect(harmWords({ ...row, ripple: { peak: 1, dip: -1, peakToDip: 2 } })).toBe('2.0 dB');
    const endless = { dip: Number.NEGATIVE_INFINITY, peakToDip: Number.POSITIVE_INFINITY };
    expect(harmWords({ ...row, ripple: { peak: 6, ...endless } })).toBe('full');
  });

  it('sums up by the worst pair that is not meant', () => {
    expect(sound.pairs.some(({ shared }) => !shared)).toBe(true);
    expect(pairsSummary(sound.pairs, kit)).toMatch(/^Worst: .* peak to dip$/);
    expect(pairsSummary([], kit)).toBe('Needs two open mics.');
    expect(pairsSummary([{ ...row, shared: true }], kit)).toContain('unmeant');
  });

  it('says a range with its reasons', () => {
    expect(rangeWords({ low: 80, high: 120 })).toBe('80 to 120 Hz');
    expect(rangeWords({ low: 45.4, high: 45.45 })).toBe('45 Hz');
    expect(reasonWords({ reasons: ['lowSpill', 'keepBody'] })).toBe(
      'takes spill of kick and bass; soft playing keeps its body',
    );
  });
});
