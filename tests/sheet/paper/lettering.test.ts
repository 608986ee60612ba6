import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth, wrapped } from '../../../src/sheet/paper/lettering.ts';

describe('the length of a line of text', () => {
  // From Adobe's metrics of Helvetica and Helvetica-Bold (Core 14 AFM files): widths in thousandths.
  test.each([
    ['A', false, 667],
    ['i', false, 222],
    ['W', false, 944],
    ['0', false, 556],
    ['A', true, 722],
    ['i', true, 278],
    ['Ö', false, 778],
  ] as const)('%s is as wide as the font says', (letter, bold, thousandths) => {
    expect(textWidth(letter, 1, bold)).toBeCloseTo(thousandths / 1000, 9);
  });

  test('is that of the letter it is read as where the font has none, or near what alphabets have', () => {
    expect(textWidth('Łódź', 1)).toBe(textWidth('Lódz', 1));
    expect(textWidth('\u0301', 1)).toBe(0);
    const cyrillic = textWidth('Барабан', 1) / 7;
    expect(cyrillic > 0.5 && cyrillic < 0.9).toBe(true);
    expect(textWidth('鼓', 1)).toBe(1);
  });

  test('is that of its parts, and grows with the size', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.string(),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (a, b, size) => {
          const sum = textWidth(a, size) + textWidth(b, size);
          expect(textWidth(`${a} ${b}`, size)).toBeCloseTo(sum + textWidth(' ', size), 6);
          expect(textWidth(a, 2 * size)).toBeCloseTo(2 * textWidth(a, size), 6);
        },
      ),
    );
  });
});

describe('a text broken into lines', () => {
  const text = fc
    .array(fc.string({ unit: 'grapheme-ascii', maxLength: 30 }), { maxLength: 12 })
    .map((words) => words.join(' '));

  test('loses no letter, and no line is too long but for one letter alone', () => {
    fc.assert(
      fc.property(text, fc.double({ min: 3, max: 80, noNaN: true }), (given, width) => {
        const lines = wrapped(given, width, 2.5);
        const letters = (all: string): string => all.replaceAll(/\s/g, '');
        expect(letters(lines.join(''))).toBe(letters(given));
        for (const line of lines) {
          expect(textWidth(line, 2.5) <= width || [...line].length === 1).toBe(true);
        }
      }),
    );
  });

  test('stays one line where it fits', () => {
    expect(wrapped('Snare 640', 100, 2.5)).toEqual(['Snare 640']);
    expect(wrapped('', 100, 2.5)).toEqual(['']);
  });
});
