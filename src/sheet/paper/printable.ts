import { Encodings } from '@pdf-lib/standard-fonts';

/** Whether a letter is among those of PDF's own fonts. */
const isKnown = (letter: string): boolean =>
  Encodings.WinAnsi.canEncodeUnicodeCodePoint(letter.codePointAt(0) ?? 0);

/** Letters that are no letter with a sign on it, and are still read as one. */
const alike: Readonly<Record<string, string>> = {
  '−': '-',
  '→': '>',
  ł: 'l',
  Ł: 'L',
  đ: 'd',
  Đ: 'D',
  ı: 'i',
  ħ: 'h',
  Ħ: 'H',
};

/**
 * A text in the letters of PDF's own fonts (WinAnsi: Western European). A letter with a sign it has not keeps its base (`č` is
 * written `c`); any other is written as a question mark.
 */
export const printable = (text: string): string =>
  [...text.normalize('NFC')].map((letter) => (isKnown(letter) ? letter : nearest(letter))).join('');

const nearest = (letter: string): string => knownAs(letter) ?? '?';

/** The known letters that a letter is read as; undefined where there are none. */
export function knownAs(letter: string): string | undefined {
  if (isKnown(letter)) return letter;
  const base = alike[letter] ?? letter.normalize('NFKD').replace(/\p{M}/gu, '');
  return base !== '' && [...base].every(isKnown) ? base : undefined;
}

/** Whether everything of a text can be written as it is. */
export const isPrintable = (text: string): boolean => [...text.normalize('NFC')].every(isKnown);
