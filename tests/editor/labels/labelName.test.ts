import { expect, test } from 'vitest';
import { labelName } from '../../../src/editor/labels/labelName.ts';

test('a name of the usual length stands whole on its label, a very long one is cut', () => {
  expect(labelName('Overhead, floor tom side')).toBe('Overhead, floor tom side');
  expect(labelName('x'.repeat(28))).toBe('x'.repeat(28));
  expect(labelName('x'.repeat(29))).toBe(`${'x'.repeat(27)}…`);
  expect(labelName(`${'y'.repeat(26)} and more`)).toBe(`${'y'.repeat(26)}…`);
});

test('a letter of several code points is not cut in two', () => {
  const drummer = '\u{1F469}\u{1F3FD}\u200D\u{1F3A4}';
  expect(labelName(drummer.repeat(28))).toBe(drummer.repeat(28));
  expect(labelName(drummer.repeat(40))).toBe(`${drummer.repeat(27)}…`);
});
