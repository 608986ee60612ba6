import { Encodings, Font } from '@pdf-lib/standard-fonts';
import { remembered } from '../../geometry/remembered.ts';
import type { Mm } from '../../units/quantity.ts';
import { knownAs } from './printable.ts';

/** How far letters stand above and below the baseline, in parts of their size: Helvetica's ascender and descender. */
export const ASCENT = 0.72;
export const DESCENT = 0.22;

const fontOf = remembered((weight: { readonly name: 'Helvetica' | 'Helvetica-Bold' }) =>
  Font.load(weight.name),
);
const REGULAR = { name: 'Helvetica' } as const;
const BOLD = { name: 'Helvetica-Bold' } as const;

/** Widths of letters that the font has not and that are like none it has, in parts of the size. Estimates, from memory. */
const UNKNOWN = { alphabet: 0.72, sign: 0, other: 1 } as const;

/**
 * How long a line of text is in Helvetica, by the font's published metrics (Adobe's AFM files), without kerning: no writer of
 * ours kerns. A letter that the font has not is as wide as the one it is read as; others are estimated.
 */
export function textWidth(text: string, size: Mm, bold = false): Mm {
  const font = fontOf(bold ? BOLD : REGULAR);
  let thousandths = 0;
  for (const letter of text) thousandths += widthOf(letter, font);
  return (thousandths * size) / 1000;
}

function widthOf(letter: string, font: Font): number {
  const known = knownAs(letter);
  if (known === undefined) {
    if (/\p{M}/u.test(letter)) return UNKNOWN.sign * 1000;
    return (
      (/[\p{Script=Cyrillic}\p{Script=Greek}\p{Script=Latin}]/u.test(letter)
        ? UNKNOWN.alphabet
        : UNKNOWN.other) * 1000
    );
  }
  let thousandths = 0;
  for (const each of known) {
    const { name } = Encodings.WinAnsi.encodeUnicodeCodePoint(each.codePointAt(0) ?? 0);
    thousandths += font.getWidthOfGlyph(name) ?? UNKNOWN.other * 1000;
  }
  return thousandths;
}

/** A text broken into lines no longer than a width; a word that is longer itself is broken where it must be. */
export function wrapped(text: string, width: Mm, size: Mm, bold = false): readonly string[] {
  const fits = (piece: string): boolean => textWidth(piece, size, bold) <= width;
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (fits(longer)) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    const parts = broken(word, fits);
    lines.push(...parts.slice(0, -1));
    current = parts.at(-1) ?? '';
  }
  return current === '' && lines.length > 0 ? lines : [...lines, current];
}

function broken(word: string, fits: (piece: string) => boolean): readonly string[] {
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && !fits(part + letter)) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return [...parts, part];
}
