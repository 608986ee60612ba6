import { fromInches, toInches } from './inch.ts';
import type { Mm } from './quantity.ts';

/** How lengths are shown. Data are always mm. */
export type LengthUnit = 'mm' | 'in';

/** A length as text with its unit: `123 mm`, or inches to a tenth: `4.8 in`; below zero with a minus, not a hyphen. Never shows `−0`. */
export function showLength(length: Mm, unit: LengthUnit): string {
  return `${showLengthNumber(length, unit).replace('-', '−')} ${unit}`;
}

/** The number alone, as an edit field shows it: whole mm, or tenths of an inch. */
export function showLengthNumber(length: Mm, unit: LengthUnit): string {
  const value = unit === 'mm' ? Math.round(length) : Math.round(toInches(length) * 10) / 10;
  return String(value + 0);
}

/** A length rounded down to what is shown of it, so that no screen promises more room than there is. */
export const roundedDown = (length: Mm, unit: LengthUnit): Mm =>
  unit === 'mm' ? Math.floor(length) : fromInches(Math.floor(toInches(length) * 10) / 10);

/** A long cable or stage length in metres with one decimal, or feet: `5.0 m`, `16.4 ft`. */
export function showLongLength(length: Mm, unit: LengthUnit): string {
  return unit === 'mm' ? `${(length / 1000).toFixed(1)} m` : `${(length / 304.8).toFixed(1)} ft`;
}

/** The length of a stock cable as the trade says it: `5 m`, `7.5 m`, `25 ft`; never more than two decimals. */
export function showCableLength(length: Mm, unit: LengthUnit): string {
  const value = unit === 'mm' ? length / 1000 : length / 304.8;
  return `${Number(value.toFixed(2))} ${unit === 'mm' ? 'm' : 'ft'}`;
}

/** A number with point or comma, or a fraction as on a tape measure: `13 1/2`, `13-1/2`, `13½`, `3/4`. */
const NUMBER = /^([+−-]?)(?:(\d+(?:[.,]\d*)?|[.,]\d+)|(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+))$/;
const SIGNS: Readonly<Record<string, string>> = { '½': ' 1/2', '¼': ' 1/4', '¾': ' 3/4' };

function readNumber(text: string): number | undefined {
  const plain = text.replace(/[½¼¾]/, (sign) => SIGNS[sign] ?? sign).trim();
  const match = NUMBER.exec(plain);
  if (!match) return undefined;
  const [, sign, decimal, whole, upper, lower] = match;
  const size =
    decimal === undefined
      ? Number(whole ?? 0) + Number(upper) / Number(lower)
      : Number(decimal.replace(',', '.'));
  if (!Number.isFinite(size)) return undefined;
  return sign === '' || sign === '+' ? size : -size;
}

/**
 * Reads a length as a person types it: `120`, `120 mm`, `12 cm`, `1.2 m`, `14 in`, `14"`, `13 1/2`, with point or comma.
 * A bare number is in the unit shown. Undefined when it is not a length.
 */
export function readLength(text: string, unit: LengthUnit): Mm | undefined {
  const match = /^(.*?)\s*(mm|cm|m|in|"|ft)?\s*$/i.exec(text);
  const value = readNumber(match?.[1] ?? '');
  if (match === null || value === undefined) return undefined;
  switch ((match[2] ?? unit).toLowerCase()) {
    case 'mm':
      return value;
    case 'cm':
      return value * 10;
    case 'm':
      return value * 1000;
    case 'ft':
      return value * 304.8;
    default:
      return fromInches(value);
  }
}
