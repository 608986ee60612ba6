import { fromInches } from './inch.ts';
import { inUnit, type LengthUnit, showLength, TYPED_DECIMALS } from './lengthText.ts';
import { inFull, neverWhole } from './numberText.ts';
import type { Mm } from './quantity.ts';

/**
 * How clearances and the margin that judges them are written, so that no verdict contradicts its number. Rules:
 * - M1 The margin is written in full where it was typed in this unit, else rounded down to the hundredth, and never to a whole number that it
 *   is not.
 * - M2 A clearance is rounded down: no screen promises more room than there is. What is short of the last digit shown is `under 1 mm` or
 *   `under 0.1 in`: 0 would be read as touching.
 * - M3 A clear one, at or over the margin, is never written as less than the margin is; a tight one always is.
 */
export interface Judged {
  readonly margin: Mm;
  readonly units: LengthUnit;
}

/** Steps of the last digit shown in one unit, and the decimals of a margin that was typed in another unit. */
const STEPS: Readonly<Record<LengthUnit, number>> = { mm: 1, in: 10 };
const DECIMALS = 2;

const lengthOf = (number: number, unit: LengthUnit): Mm =>
  unit === 'mm' ? number : fromInches(number);
const down = (number: number, steps: number): number => Math.floor(number * steps) / steps;

/** The margin as it is written, in its unit (M1). */
function shownMargin({ margin, units }: Judged): number {
  const number = inUnit(margin, units);
  return (
    inFull(number, TYPED_DECIMALS[units]) ??
    neverWhole(number, DECIMALS, (value, decimals) => down(value, 10 ** decimals))
  );
}

/** The number of a margin alone, as its edit field writes it (M1). */
export const writeMargin = (margin: Mm, units: LengthUnit): string =>
  String(shownMargin({ margin, units }));

/** The margin as text: `50 mm`, `1.96 in` (M1). */
export const showMargin = ({ margin, units }: Judged): string =>
  `${writeMargin(margin, units)} ${units}`;

/** A finite clearance as it is written, in its unit (M2, M3). */
function shownClearance(clearance: Mm, judged: Judged): number {
  const steps = STEPS[judged.units];
  const floor = down(inUnit(clearance, judged.units), steps);
  const margin = shownMargin(judged);
  if (clearance >= judged.margin) return Math.max(floor, margin);
  if (floor < margin || clearance < 0) return floor;
  return Math.max(0, (Math.ceil(margin * steps) - 1) / steps);
}

/** A clearance as text: `84 mm`, `1.9 in`, `under 1 mm`, `−12 mm`; a dash when nothing moves near. */
export function showClearance(clearance: Mm, judged: Judged): string {
  if (!Number.isFinite(clearance)) return '–';
  const { units } = judged;
  const shown = shownClearance(clearance, judged);
  if (shown === 0) return `under ${1 / STEPS[units]} ${units}`;
  return `${String(shown).replace('-', '−')} ${units}`;
}

/** How far a clearance is inside the margin by what is written of both, at least the last digit: `12 mm`, `0.1 in`. */
export function showInside(clearance: Mm, judged: Judged): string {
  const steps = STEPS[judged.units];
  const inside = shownMargin(judged) - shownClearance(clearance, judged);
  const whole = Math.max(1, Math.round(inside * steps)) / steps;
  return showLength(lengthOf(whole, judged.units), judged.units);
}

/** How far a clear one is over the margin, rounded down and never more than what is written of both: `0 mm`, `0.3 in`. */
export function showSpare(clearance: Mm, judged: Judged): string {
  const { margin, units } = judged;
  const written = shownClearance(clearance, judged) - shownMargin(judged);
  const spare = Math.min(written, inUnit(clearance - margin, units));
  // A binary fraction of 0.1 must not be rounded to the digit below.
  return `${Math.max(0, down(spare + 1e-6, STEPS[units]))} ${units}`;
}
