import { expect, test } from 'vitest';
import { needWords } from '../../../src/views/words/needWords.ts';

test('what is to solve and what to look at, each only where there is any', () => {
  expect(needWords({ solve: 3, look: 5 })).toBe('3 to solve, 5 to look at');
  expect(needWords({ solve: 0, look: 5 })).toBe('5 to look at');
  expect(needWords({ solve: 1, look: 0 })).toBe('1 to solve');
  expect(needWords({ solve: 0, look: 0 })).toBe('');
});
