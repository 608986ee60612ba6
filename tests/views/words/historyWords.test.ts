import { expect, it } from 'vitest';
import { momentWords, pointKindWords, pointWords } from '../../../src/views/words/historyWords.ts';

const row = { revision: 3, at: new Date(2026, 6, 11, 9, 5, 7).getTime() };
const plain = { ...row, name: '', signed: null, withheld: null, tip: null } as const;

it('says what kind of point it is', () => {
  expect(pointKindWords(plain)).toBe('Saved as you worked');
  expect(pointKindWords({ ...plain, tip: 'holds' })).toBe('Saved as you worked');
  expect(pointKindWords(plain, 'Snare moved')).toBe('Snare moved');
  expect(pointKindWords({ ...plain, name: 'Sound check', signed: 'Drummer' })).toBe(
    '“Sound check”, Signed off by Drummer',
  );
  expect(pointKindWords({ ...plain, name: 'Show' }, 'Snare moved')).toBe('“Show”');
  expect(pointKindWords({ ...plain, withheld: 'Drummer' })).toBe('Not agreed to by Drummer');
  expect(pointKindWords({ ...plain, tip: 'aside' })).toBe('From another tablet');
});

it('names a point by its moment, to the second', () => {
  expect(momentWords(row.at)).toBe('2026-07-11 09:05:07');
  expect(pointWords(plain)).toBe('the point of 2026-07-11 09:05:07');
  expect(pointWords({ ...plain, name: 'Show' })).toBe('“Show” of 2026-07-11 09:05:07');
});
