import { fromInches } from '../../units/inch.ts';
import type { LengthUnit } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';

/** Scales that drawings and rulers have, the largest first: 1 to this. */
export const SCALES = [5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 500] as const;

/** The largest scale at which something of a size fits into a room; the smallest of all where none does. */
export function scaleFor(
  size: { readonly width: Mm; readonly height: Mm },
  room: { readonly width: Mm; readonly height: Mm },
): number {
  const fits = SCALES.find((s) => size.width / s <= room.width && size.height / s <= room.height);
  return fits ?? SCALES[SCALES.length - 1] ?? 500;
}

/** Lengths that a scale bar may stand for: round metres or round feet, mm. */
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
const BARS: Readonly<Record<LengthUnit, readonly Mm[]>> = {
  mm: STEPS.map((step) => step * 1000),
  in: STEPS.filter((step) => step >= 1).map((step) => fromInches(step * 12)),
};

/** What the scale bar stands for: the longest round length that takes no more than `most` mm on paper. */
export const barLength = (scale: number, unit: LengthUnit, most: Mm): Mm =>
  BARS[unit].findLast((length) => length / scale <= most) ?? BARS[unit][0] ?? 1000;

/** Steps of a ruler along a drawing: a tick at each, and a number at every so many. */
export interface RulerSteps {
  readonly tick: Mm;
  readonly number: Mm;
}

/** Ticks stand at least this far apart on paper, numbers this far. */
const TICKS_APART: Mm = 1.8;
const NUMBERS_APART: Mm = 9;

export function rulerSteps(scale: number, unit: LengthUnit): RulerSteps {
  const steps = unit === 'mm' ? [50, 100, 250, 500, 1000, 2000, 5000, 10_000] : inchSteps;
  const first = (apart: Mm): Mm => steps.find((step) => step / scale >= apart) ?? 10_000;
  return { tick: first(TICKS_APART), number: first(NUMBERS_APART) };
}

const inchSteps = [2, 6, 12, 24, 60, 120, 240, 480].map(fromInches);
