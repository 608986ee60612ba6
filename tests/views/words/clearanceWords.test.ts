import { describe, expect, it } from 'vitest';
import { clearancePlace, clearanceWords } from '../../../src/views/words/clearanceWords.ts';
import { sample, snareRow } from './sampleLayout.ts';

describe('the clearance sentence', () => {
  it('names amount, hand, part and move', () => {
    expect(clearanceWords(snareRow(-12, 'struck'), sample)).toBe(
      '12 mm too close: right stick, travelling from Snare to Ride',
    );
  });

  it('names the part of the mic and the place', () => {
    expect(clearancePlace(snareRow(-12, 'struck'), sample)).toBe(
      'the boom, over Snare, on the side away from the player, 700 mm above the deck',
    );
  });

  it('speaks inches when the layout does', () => {
    expect(clearanceWords(snareRow(84, 'clear'), { ...sample, units: 'in' })).toContain(
      '3.3 in clear',
    );
  });

  it('says so when nothing moves', () => {
    const still = {
      mic: 'mic-snare',
      verdict: 'clear',
      clearance: Infinity,
      nearest: undefined,
    } as const;
    expect(clearanceWords(still, sample)).toBe('nothing moves near it');
    expect(clearancePlace(still, sample)).toBeUndefined();
  });
});
