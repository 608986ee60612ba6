import { Encodings, Font } from '@pdf-lib/standard-fonts';
import { remembered } from '../../geometry/remembered.ts';
import type { Mm } from '../../units/quantity.ts';

/** How far letters stand above and below the baseline, in parts of their size: Helvetica's ascender and descender. */
export const ASCENT = 0.72;
export const DESCENT = 0.22;

const fontOf = remembered((weight: { readonly name: 'Helvetica' | 'Helvetica-Bold' }) =>
  Font.load(weight.name),
);
const REGULAR = { name: 'Helvetica' } as const;
const BOLD = { name: 'Helvetica-Bold' } as const;

/** Width of a letter that the font has not, in parts of the size: as wide as the widest it may be replaced by. */
const UNKNOWN = 1;

/**
 * How long a line of text is in Helvetica, by the font's published metrics (Adobe's AFM files), without kerning: no writer of
 * ours kerns.
 */
export function textWidth(text: string, size: Mm, bold = false): Mm {
  const font = fontOf(bold ? BOLD : REGULAR);
  const { WinAnsi } = Encodings;
  let thousandths = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    const known = WinAnsi.canEncodeUnicodeCodePoint(code)
      ? font.getWidthOfGlyph(WinAnsi.encodeUnicodeCodePoint(code).name)
      : undefined;
    thousandths += typeof known === 'number' ? known : UNKNOWN * 1000;
  }
  return (thousandths * size) / 1000;
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
