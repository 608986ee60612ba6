import { fromInches, MM_PER_FOOT, MM_PER_INCH, toInches } from './inch.ts';
import { inFull, readNumber, readWithUnit, writeNear, writeNumber } from './numberText.ts';
import type { Mm } from './quantity.ts';

/** How lengths are shown. Data are always mm. */
export type LengthUnit = 'mm' | 'in';

/** A length as text with its unit: `123 mm`, or inches to a tenth: `4.8 in`; below zero with a minus, not a hyphen. Never shows `−0`. */
export function showLength(length: Mm, unit: LengthUnit): string {
  return `${showLengthNumber(length, unit).replace('-', '−')} ${unit}`;
}

/** The number alone: whole mm, or tenths of an inch. */
export function showLengthNumber(length: Mm, unit: LengthUnit): string {
  const value = unit === 'mm' ? Math.round(length) : Math.round(toInches(length) * 10) / 10;
  return String(value + 0);
}

/** The least length that is shown as more than nothing. */
export const leastShown = (unit: LengthUnit): Mm => (unit === 'mm' ? 1 : fromInches(0.1));

/** A length rounded down to what is shown of it, so that no screen promises more room than there is. */
export const roundedDown = (length: Mm, unit: LengthUnit): Mm =>
  unit === 'mm' ? Math.floor(length) : fromInches(Math.floor(toInches(length) * 10) / 10);

/** A long cable or stage length in metres with one decimal, or feet: `5.0 m`, `16.4 ft`. */
export function showLongLength(length: Mm, unit: LengthUnit): string {
  return unit === 'mm'
    ? `${(length / 1000).toFixed(1)} m`
    : `${(length / MM_PER_FOOT).toFixed(1)} ft`;
}

/** The length of a stock cable as the trade says it: `5 m`, `7.5 m`, `25 ft`; never more than two decimals. */
export function showCableLength(length: Mm, unit: LengthUnit): string {
  const value = unit === 'mm' ? length / 1000 : length / MM_PER_FOOT;
  return `${Number(value.toFixed(2))} ${unit === 'mm' ? 'm' : 'ft'}`;
}

/** The decimals in which a length can be typed, and to which one is rounded that nobody typed, as after a drag. */
export const TYPED_DECIMALS: Readonly<Record<LengthUnit, number>> = { mm: 2, in: 3 };
const USUAL_DECIMALS: Readonly<Record<LengthUnit, number>> = { mm: 0, in: 1 };
/** To which one is rounded that was typed in the other unit. */
const NEAR_DECIMALS = 2;

/** A length as a number of mm or inches. */
export const inUnit = (length: Mm, unit: LengthUnit): number =>
  unit === 'mm' ? length : toInches(length);

const isTyped = (length: Mm): boolean =>
  (['mm', 'in'] as const).some(
    (unit) => inFull(inUnit(length, unit), TYPED_DECIMALS[unit]) !== undefined,
  );

/**
 * A length as an edit field writes it. What was typed is written in full, down to hundredths of a mm and thousandths of an inch (13 3/8 in
 * is 13.375), or to the hundredth where it was typed in the other unit, and never as a whole number that it is not; any other is
 * rounded to the usual decimals: whole mm or tenths of an inch.
 */
export function writeLength(
  length: Mm,
  unit: LengthUnit,
  usual: number = USUAL_DECIMALS[unit],
): string {
  const number = inUnit(length, unit);
  const full = inFull(number, TYPED_DECIMALS[unit]);
  if (full !== undefined) return String(full);
  return isTyped(length) ? writeNear(number, NEAR_DECIMALS) : writeNumber(number, usual, usual);
}

/** A typed length as it is kept: as it is, where either unit writes it in full; else, as a third of an inch, rounded to what the shown one writes. */
export function keptLength(length: Mm, unit: LengthUnit): Mm {
  if (isTyped(length)) return length;
  const number = Number(inUnit(length, unit).toFixed(TYPED_DECIMALS[unit]));
  return unit === 'mm' ? number : fromInches(number);
}

/** What a bare number is read as. */
export type BareUnit = LengthUnit | 'm' | 'ft';

const MM_PER: Readonly<Record<string, Mm>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  ...named(MM_PER_INCH, ['in', 'inch', 'inches', '"', '”', '″', "''", '’’']),
  ...named(MM_PER_FOOT, ['ft', 'foot', 'feet', "'", '’', '′']),
};

function named(length: Mm, names: readonly string[]): Readonly<Record<string, Mm>> {
  return Object.fromEntries(names.map((name) => [name, length]));
}

/**
 * Reads a length as a person types it: `120`, `12 cm`, `1,2 m`, `14"`, `13 1/2 in`, `5\'11"`, `5 ft 11 in`. A bare number is in the unit
 * given. Undefined when it is not a length, or could be two: thousandths of a mm are nobody's length, so `1.200 mm` is refused as
 * `1,200` is (T3).
 */
export function readLength(text: string, bare: BareUnit): Mm | undefined {
  const feet = readFeetAndInches(text);
  if (feet !== undefined) return feet;
  const read = readWithUnit(text);
  const unit = read?.unit || bare;
  const size = Object.hasOwn(MM_PER, unit) ? MM_PER[unit] : undefined;
  if (read === undefined || size === undefined) return undefined;
  if (unit === 'mm' && /[1-9]\d{0,2}\.\d{3}$/.test(read.written)) return undefined;
  return read.number * size;
}

/** Whole feet, then inches from 0 to below 12, whose mark may be left out. */
const FEET =
  /^\s*([+−-]?)(\d+)\s*(?:(?:ft|foot|feet)\s*|['’′]\s*-?\s*)(\d.*?|[½¼¾])\s*(?:in|inch|inches|["”″]|''|’’)?\s*$/i;

function readFeetAndInches(text: string): Mm | undefined {
  const match = FEET.exec(text);
  const inches = readNumber(match?.[3] ?? '');
  if (!match || inches === undefined || inches >= 12) return undefined;
  const length = Number(match[2]) * MM_PER_FOOT + fromInches(inches);
  return match[1] === '' || match[1] === '+' ? length : -length;
}
