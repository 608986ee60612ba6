import type { LengthUnit } from '../../units/lengthText.ts';
import { twoMeanings } from '../../units/numberText.ts';
import type { Measure } from './measure.ts';

/** The smallest and largest value a field takes. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** The limits written in a field of the layout's schema, so that a screen and a file agree on them. */
export function limitsOf(field: {
  readonly minValue: number | null;
  readonly maxValue: number | null;
}): Limits {
  return {
    low: field.minValue ?? Number.NEGATIVE_INFINITY,
    high: field.maxValue ?? Number.POSITIVE_INFINITY,
  };
}

export type Reading =
  | {
      readonly ok: true;
      readonly value: number;
      /** How the value is shown, where it is not quite what was typed. */
      readonly rounded?: string;
    }
  | { readonly ok: false; readonly message: string };

/** Reads what a person typed into a field, or says what was expected. */
export function readField(
  text: string,
  measure: Measure,
  limits: Limits,
  unit: LengthUnit,
): Reading {
  const typed = measure.read(text, unit);
  if (typed === undefined) return { ok: false, message: unreadable(text, measure, unit) };
  if (measure.whole && !Number.isInteger(typed)) {
    return {
      ok: false,
      message: `“${shortened(text)}” can't be used. Type ${measure.expected(unit)}.`,
    };
  }
  const value = measure.kept(typed, unit);
  if (value < limits.low || value > limits.high) {
    return { ok: false, message: rangeWords(measure, limits, unit) };
  }
  if (Math.abs(value - typed) <= SAME) return { ok: true, value };
  return { ok: true, value, rounded: measure.show(value, unit) };
}

/** Nearer than this, nobody typed another number. */
const SAME = 1e-6;

/** What is said beside a number that was typed finer than the field keeps: `Rounded to 12.35.` */
export const roundedWords = ({ rounded }: Extract<Reading, { ok: true }>): string =>
  rounded === undefined ? '' : `Rounded to ${rounded}.`;

/** Why a text is no value, and what would be. */
function unreadable(text: string, measure: Measure, unit: LengthUnit): string {
  const typed = shortened(text);
  if (typed === '') return `Nothing was typed. Type ${measure.expected(unit)}.`;
  const [low, high] = twoMeanings(text) ?? [];
  const joined = measure.read(text.replace(/[.,](?=\d{3})/, ''), unit);
  return low !== undefined && joined !== undefined
    ? `“${typed}” could mean ${low} or ${high}. Type one of them.`
    : `“${typed}” can't be read. Type ${measure.expected(unit)}.`;
}

const shortened = (text: string): string => text.trim().slice(0, 20);

/** `Allowed: 0 to 4000 mm.` */
export function rangeWords(measure: Measure, limits: Limits, unit: LengthUnit): string {
  const unitText = measure.unitText(unit);
  const space = unitText === '' || unitText === '°' ? '' : ' ';
  const low = measure.show(limits.low, unit);
  const high = measure.show(limits.high, unit);
  return `Allowed: ${low} to ${high}${space}${unitText}.`;
}

/** A value after some steps of a button, on whole steps from the first press, kept within the limits. */
export function stepped(value: number, change: number, limits: Limits): number {
  const next = Math.min(limits.high, Math.max(limits.low, value + change));
  return Math.round(next * 1e6) / 1e6;
}
