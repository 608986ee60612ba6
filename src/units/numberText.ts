/**
 * Numbers as people type them, and as an edit field writes them. Rules:
 * - T1 One point or one comma divides the decimals; a sign stands before: `+`, `-` or `−`.
 * - T2 Or a fraction as on a tape measure: `13 1/2`, `13-1/2`, `13½`, `3/4`.
 * - T3 A comma before exactly three digits, with no leading 0, may divide thousands or decimals: `1,200` is refused, not guessed.
 * - T4 A unit is whatever stands behind the last digit.
 */
const NUMBER = /^([+−-]?)(?:(\d+(?:[.,]\d*)?|[.,]\d+)|(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+))$/;
const SIGNS: Readonly<Record<string, string>> = { '½': ' 1/2', '¼': ' 1/4', '¾': ' 3/4' };
const MAY_BE_THOUSANDS = /^[+−-]?[1-9]\d{0,2},\d{3}$/;

/** The number that a text writes, without a unit (T1 to T3); undefined when it writes none, or could write two. */
export function readNumber(text: string): number | undefined {
  const plain = text.replace(/[½¼¾]/, (sign) => SIGNS[sign] ?? sign).trim();
  const match = NUMBER.exec(plain);
  if (!match || MAY_BE_THOUSANDS.test(plain)) return undefined;
  const [, sign, decimal, whole, upper, lower] = match;
  const size =
    decimal === undefined
      ? Number(whole ?? 0) + Number(upper) / Number(lower)
      : Number(decimal.replace(',', '.'));
  if (!Number.isFinite(size)) return undefined;
  return sign === '' || sign === '+' ? size : -size;
}

/** A number and the unit that is written behind it, in small letters; the unit is empty for a bare number (T4). */
export function readWithUnit(
  text: string,
): { readonly number: number; readonly written: string; readonly unit: string } | undefined {
  const match = /^(.*[\d.,½¼¾])\s*(.*?)\s*$/.exec(text);
  const written = match?.[1]?.trim() ?? '';
  const number = readNumber(written);
  return number === undefined
    ? undefined
    : { number, written, unit: (match?.[2] ?? '').toLowerCase() };
}

/** The two numbers that `1,200` or `1.200` can mean, as a person would write them: `['1.2', '1200']`. */
export function twoMeanings(text: string): readonly [string, string] | undefined {
  const match = /(?<![\d.,])([1-9]\d{0,2})[.,](\d{3})(?![\d.,])/.exec(text);
  return match ? [String(Number(`${match[1]}.${match[2]}`)), `${match[1]}${match[2]}`] : undefined;
}

/** Nearer than this is the same number: the noise of arithmetic, far below what anyone types. */
const NOISE = 1e-6;

/** A number that so many decimals write in full, as they do what was typed; undefined for any other. */
export function inFull(value: number, decimals: number): number | undefined {
  const written = Number(value.toFixed(decimals));
  return Math.abs(written - value) <= NOISE ? written + 0 : undefined;
}

/**
 * A number as an edit field writes it: in full when `most` decimals are enough for that, as they are for what was typed; else
 * rounded to `usual` decimals, as after a drag. Never `-0`.
 */
export function writeNumber(value: number, usual: number, most: number): string {
  return String(inFull(value, most) ?? Number(value.toFixed(usual)) + 0);
}

/** As many decimals as a number is ever written with. */
const MOST = 6;

/** So many decimals of a number, by `to`, and more where it would be taken for a whole number that it is not. */
export function neverWhole(
  value: number,
  decimals: number,
  to: (value: number, decimals: number) => number,
): number {
  for (let more = decimals; more < MOST; more += 1) {
    const written = to(value, more);
    if (!Number.isInteger(written) || Math.abs(written - value) <= NOISE) return written + 0;
  }
  return to(value, MOST) + 0;
}

/** A number rounded to so many decimals, never to a whole number that it is not: 2.0004 in stays 2.0004. */
export const writeNear = (value: number, decimals: number): string =>
  String(neverWhole(value, decimals, (number, to) => Number(number.toFixed(to))));
