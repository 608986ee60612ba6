import { describe, expect, it } from 'vitest';
import { counted, listed, nameOf, unbroken } from '../../../src/views/words/nameOf.ts';
import { sample } from './sampleLayout.ts';

describe('names', () => {
  it('are those a person gave, told apart where a mic has the name of a piece', () => {
    expect(nameOf(sample, 'rack-1')).toBe('Rack tom 1');
    expect(nameOf(sample, 'mic-snare')).toBe('Snare mic');
    expect(nameOf(sample, 'nothing')).toBe('nothing');
  });

  it('are listed and counted as people do', () => {
    expect([[], ['A'], ['A', 'B'], ['A', 'B', 'C']].map(listed)).toEqual([
      '',
      'A',
      'A and B',
      'A, B and C',
    ]);
    expect([counted(1, 'mic'), counted(0, 'mic')]).toEqual(['1 mic', '0 mics']);
  });
});

it('a number is never parted from its unit', () => {
  expect(unbroken('Half, 150 mm; up −1.5 in')).toBe('Half, 150\u00a0mm; up −1.5\u00a0in');
  expect(unbroken('3 inputs in a row')).toBe('3 inputs in a row');
});
