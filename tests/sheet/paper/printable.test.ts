import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isPrintable, printable } from '../../../src/sheet/paper/printable.ts';

test('what is written can always be printed, and what can be printed is written as it is', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(isPrintable(printable(text))).toBe(true);
      if (isPrintable(text)) expect(printable(text)).toBe(text.normalize('NFC'));
    }),
  );
});

test('letters with signs keep their base; others become a question mark', () => {
  expect(printable('Größe, naïve – “quoted”')).toBe('Größe, naïve – “quoted”');
  expect(printable('Łódź, Dvořák, −3')).toBe('Lódz, Dvorák, -3');
  expect(printable('鼓 Барабан')).toBe('? ???????');
});
