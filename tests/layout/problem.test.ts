import { expect, test } from 'vitest';
import { showPath, summary, valueAt } from '../../src/layout/problem.ts';

test('a path is read like one in a program', () => {
  expect(showPath(['pieces', 3, 'support', 'by'])).toBe('pieces[3].support.by');
  expect(showPath([])).toBe('');
});

test('neither a long name nor a long value makes a long message', () => {
  expect(showPath(['x'.repeat(1_000_000)])).toHaveLength(61);
  expect(summary('x'.repeat(1_000_000))).toBe('a text of 1000000 characters');
  expect(summary(Array(5000).fill(1))).toBe('a list of 5000');
});

test.each([
  [undefined, 'nothing'],
  [null, 'null'],
  ['a "name"', '"a \\"name\\""'],
  [{ a: 1 }, 'an object'],
  [Number.POSITIVE_INFINITY, 'Infinity'],
  [12.5, '12.5'],
])('%j is summed up as %s', (value, words) => {
  expect(summary(value)).toBe(words);
});

test('a path leads to own values only', () => {
  const document = { pieces: [{ x: 1 }] };
  expect(valueAt(document, ['pieces', 0, 'x'])).toBe(1);
  expect(valueAt(document, ['pieces', 1, 'x'])).toBeUndefined();
  expect(valueAt(document, ['toString'])).toBeUndefined();
});
