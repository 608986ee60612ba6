import { turnBetween } from '../units/angle.ts';
import type { Decibels, Degrees, Mm, Ms } from '../units/quantity.ts';
import type { Hertz, MetresPerSecond } from './quantities.ts';

/** What one sound does to itself when it is mixed with a later copy. */
export interface Ripple {
  readonly peak: Decibels;
  /** -Infinity for copies of equal level. */
  readonly dip: Decibels;
  readonly peakToDip: Decibels;
}

/** Whether two copies start the same way or one is upside down. */
export type Start = 'equal' | 'opposite';

/** H9 The ripple of two copies whose levels differ: 20 lg(1 + a) to 20 lg(1 - a), a = 10^(-difference / 20). */
export function ripple(levelDifference: Decibels): Ripple {
  const a = 10 ** (-Math.abs(levelDifference) / 20);
  const peak = 20 * Math.log10(1 + a);
  const dip = 20 * Math.log10(1 - a);
  return { peak, dip, peakToDip: peak - dip };
}

/** A path difference that is a rounding error, metres. */
const NO_WAY = 1e-6;

/**
 * H10 The lowest notches of two copies, one later by a path difference d: (2n - 1) c / 2d for an equal start, n c / d for an
 *     opposite one (which also loses the lowest bass). None without a path difference; a thousandth of a mm is none.
 */
export function combNulls(
  pathDifference: Mm,
  speed: MetresPerSecond,
  start: Start,
): readonly Hertz[] {
  const metres = Math.abs(pathDifference) / 1000;
  if (metres < NO_WAY) return [];
  const orders = start === 'equal' ? [0.5, 1.5, 2.5] : [1, 2, 3];
  return orders.map((order) => (order * speed) / metres);
}

/** A delay, also in samples at the two rates consoles run at; fractions kept. */
export interface Delay {
  readonly ms: Ms;
  readonly samples48: number;
  readonly samples96: number;
}

/** H11 The time sound takes for a distance. */
export function delayOf(distance: Mm, speed: MetresPerSecond): Delay {
  const ms = distance / speed;
  return { ms, samples48: ms * 48, samples96: ms * 96 };
}

/** H12 How far a tone has turned after a delay, in (-180, 180]; upside down counts as 180. */
export const phaseAfter = (delay: Ms, frequency: Hertz, start: Start): Degrees =>
  turnBetween(0, (360 * frequency * delay) / 1000 + (start === 'opposite' ? 180 : 0));
