import { describe, expect, it } from 'vitest';
import { mountWords, patternWords } from '../../../src/views/words/kindWords.ts';
import { sample } from './sampleLayout.ts';

describe('kinds in words', () => {
  it('calls first-order patterns by their usual names', () => {
    const names = [1, 0.7, 0.5, 0.375, 0.25, 0].map(patternWords);
    expect(names).toEqual([
      'Omni',
      'Subcardioid',
      'Cardioid',
      'Supercardioid',
      'Hypercardioid',
      'Figure-8',
    ]);
  });

  it('says how every mic of the sample is held', () => {
    expect(new Set(sample.mics.map((mic) => mountWords(mic.mount)))).toEqual(
      new Set([
        'Low tripod boom',
        'Lying in the kick',
        'Medium tripod boom',
        'Rubber rim clip',
        'Tall tripod boom',
      ]),
    );
  });
});
