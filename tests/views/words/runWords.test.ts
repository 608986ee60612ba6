import { describe, expect, it } from 'vitest';
import { runPartWords, runWords } from '../../../src/views/words/runWords.ts';
import { sample } from './sampleLayout.ts';

const run = {
  mic: 'mic-snare',
  input: 4,
  route: [],
  parts: [],
  total: 3420,
  stock: 5000,
  through: [],
};

describe('a run in words', () => {
  it('names input, mic, length and cable', () => {
    expect(runWords(run, sample)).toBe('Input 4: Snare mic, 3.4 m, 5.0 m cable');
    expect(runWords({ ...run, input: null, stock: null }, sample)).toBe(
      'Not plugged: Snare mic, 3.4 m, no cable left that reaches',
    );
    expect(runWords(run, { ...sample, units: 'in' })).toContain('11.2 ft');
  });

  it('names the parts', () => {
    expect(runPartWords('loopAtBox')).toBe('Service loop at the box');
  });
});
