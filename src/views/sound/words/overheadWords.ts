import type { Layout } from '../../../layout/layout.ts';
import type { OverheadSound, OverheadStart } from '../../../report/sound.ts';
import { type LengthUnit, showLength } from '../../../units/lengthText.ts';
import type { Decibels, Mm } from '../../../units/quantity.ts';
import { nameOf } from '../../words/nameOf.ts';
import { differenceWords } from './amounts.ts';

/** How evenly the cymbals come, and over what. */
export const spreadWords = (
  { together }: Pick<OverheadSound, 'together'>,
  layout: Layout,
): string => {
  if (together.loudest === null) return 'No cymbals.';
  return `Cymbals within ${differenceWords(together.spread)}, ${nameOf(layout, together.loudest)} loudest; ${washWords(together.overWash)}.`;
};

/** `8.1 dB over the stage wash`. */
export function washWords(overWash: Decibels): string {
  if (!Number.isFinite(overWash)) return 'no cymbals over the stage wash';
  return overWash >= 0
    ? `${differenceWords(overWash)} over the stage wash`
    : `${differenceWords(-overWash)} under the stage wash`;
}

/** A balance under this is taken as even. */
const EVEN: Decibels = 0.5;

/** Where the snare sits between the outermost overheads. */
export function balanceWords({ balance }: Pick<OverheadSound, 'balance'>, layout: Layout): string {
  if (!balance) return 'The snare’s balance needs two overheads and a snare.';
  if (Math.abs(balance.level) < EVEN) return 'The snare is even between left and right.';
  const louder = balance.level > 0 ? balance.right : balance.left;
  return `The snare is ${differenceWords(Math.abs(balance.level))} louder in ${nameOf(layout, louder)}.`;
}

/** What the mark on the chart means. */
export const enoughWords = (enough: Mm | null, unit: LengthUnit): string =>
  enough === null
    ? 'With fewer than two cymbals height evens nothing out.'
    : `From ${showLength(enough, unit)} over the cymbals on, more height evens them out by less than half a dB.`;

/** The overheads’ heights over the highest cymbal: one figure when they agree to 5 mm. */
export function heightsWords(heights: readonly Mm[], unit: LengthUnit): string {
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  return high - low < 5
    ? `${showLength(low, unit)} over the highest cymbal`
    : `${showLength(low, unit)} to ${showLength(high, unit)} over the highest cymbal`;
}

const starts: Readonly<Record<OverheadStart, { readonly name: string; readonly what: string }>> = {
  spaced: { name: 'Spaced', what: 'each over its half of the cymbals' },
  coincident: { name: 'Coincident', what: 'together over the middle, leaning 45° apart' },
  snareEquidistant: { name: 'Snare-equidistant', what: 'spaced, equally far from the snare' },
};

/** A usual arrangement and what it is. */
export const startWords = (start: OverheadStart) => starts[start];

/** Arrangements in the order in which they are offered. */
export const STARTS = Object.keys(starts) as OverheadStart[];
