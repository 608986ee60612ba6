import type { Mm } from '../units/quantity.ts';
import type { Freedom } from './clearSpotFamily.ts';
import type { FoundSpot, SpotTrial } from './clearSpotTrial.ts';

/** Something at some values, the better the less it costs. */
interface Costing {
  readonly values: readonly number[];
  readonly cost: Mm;
}

/** Tells what is at some values, where that is something which costs less than `limit`. */
interface Trial<Found extends Costing> {
  found(values: readonly number[], limit: Mm): Found | undefined;
}

/** Strides of the descent, in steps of each freedom, the longest first. */
const STRIDES = [27, 9, 3, 1];
/** Strides by which one value alone goes back to what it was. */
const SIZES = [512, 256, 128, 64, 32, 16, 8, 4, 2, 1];
/** A stride has to save this much to be worth it, mm. */
const SAVING: Mm = 0.05;

/**
 * Rule N6, what is found is made cheaper: from a clear spot to any of its neighbours that is clear and costs less, in ever smaller strides, until none of
 * them is. Neighbours differ by a stride in any of the values, or several at once, since along the edge of what is swept one alone leads nowhere.
 */
export function cheaper<Found extends Costing>(
  freedoms: readonly Freedom[],
  trial: Trial<Found>,
  found: Found,
): Found {
  const ways = waysOf(freedoms.length);
  let best = found;
  for (const stride of STRIDES) {
    let from: Found | undefined;
    while (from !== best) {
      from = best;
      for (const way of ways) {
        const values = moved(freedoms, best.values, (k) => (way[k] ?? 0) * stride);
        best = trial.found(values, best.cost - SAVING) ?? best;
      }
    }
  }
  return best;
}

/**
 * Rule N6, what is found is made simpler: values go back to what they were, or as near to it as the spot stays one that costs no more. So a change of one
 * number alone is not mixed with steps of others.
 */
export function simplest(
  freedoms: readonly Freedom[],
  trial: SpotTrial,
  found: FoundSpot,
): FoundSpot {
  let best = found;
  const tryValue = (k: number, value: number): void => {
    best = trial.found(best.values.with(k, value), best.cost + ROUNDING) ?? best;
  };
  for (const k of freedoms.keys()) if (best.values[k] !== 0) tryValue(k, 0);
  for (const [k, { step }] of freedoms.entries()) {
    for (const size of SIZES) {
      const value = best.values[k] ?? 0;
      if (Math.abs(value) >= size * step) tryValue(k, value - Math.sign(value) * size * step);
    }
  }
  return best;
}

/** Costs that differ by less are the same, mm. */
const ROUNDING: Mm = 1e-9;

const moved = (
  freedoms: readonly Freedom[],
  values: readonly number[],
  strides: (k: number) => number,
): readonly number[] =>
  freedoms.map(({ step, least, most }, k) => {
    const value = (values[k] ?? 0) + strides(k) * step;
    return Math.max(least, Math.min(most, value));
  });

/** All ways of going one stride down, none or up in each of some values, but for going none in all. */
function waysOf(count: number): readonly (readonly number[])[] {
  let ways: readonly (readonly number[])[] = [[]];
  for (let k = 0; k < count; k++) ways = ways.flatMap((way) => [-1, 0, 1].map((s) => [...way, s]));
  return ways.filter((way) => way.some((stride) => stride !== 0));
}
