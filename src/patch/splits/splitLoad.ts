import type { Decibels } from '../../units/quantity.ts';
import type { Ohms } from '../quantities.ts';

/** What a split is to the mic. */
export interface SplitLoad {
  /** All legs together. */
  readonly load: Ohms;
  /** What each leg loses against standing alone at the mic; in the order of the legs, not negative. */
  readonly lost: readonly Decibels[];
}

/**
 * D1 The input impedances of all legs stand in parallel at the mic. A transformer counts as an ideal 1:1; a real one takes some
 *    tenths of a decibel more.
 * D2 Over a source impedance S a load R gets R / (S + R) of the mic's open voltage. A leg loses 20 lg of what it would get
 *    alone over what all legs together leave.
 */
export function splitLoad(source: Ohms, legs: readonly Ohms[]): SplitLoad {
  const load = 1 / legs.reduce((sum, impedance) => sum + 1 / impedance, 0);
  const lost = legs.map(
    (alone) => 20 * Math.log10((alone * (source + load)) / (load * (source + alone))),
  );
  return { load, lost: lost.map((decibels) => Math.max(0, decibels)) };
}
