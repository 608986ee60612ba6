import type { Id } from '../../../layout/fields.ts';
import type { TimingRow } from '../../../report/sound.ts';

/** Which timed pairs are shown: those of one mic, or of two; null for any. */
export interface PairFilter {
  readonly mic: Id | null;
  readonly against: Id | null;
}

export const ALL_PAIRS: PairFilter = { mic: null, against: null };

const isOf = ({ first, second }: TimingRow, mic: Id | null): boolean =>
  mic === null || mic === first || mic === second;

/** The rows that a filter lets through, in their order. */
export const filteredPairs = (
  rows: readonly TimingRow[],
  { mic, against }: PairFilter,
): readonly TimingRow[] => rows.filter((row) => isOf(row, mic) && isOf(row, against));

/** Every mic that is timed, in the order of a list of all. */
export const timedMics = (rows: readonly TimingRow[], all: readonly Id[]): readonly Id[] =>
  all.filter((mic) => rows.some((row) => isOf(row, mic)));

/** Every mic that is timed against one. */
export const partnersOf = (
  rows: readonly TimingRow[],
  mic: Id | null,
  all: readonly Id[],
): readonly Id[] =>
  timedMics(
    rows.filter((row) => isOf(row, mic)),
    all,
  ).filter((other) => other !== mic);

/** A filter without mics that are not timed, or not against each other. */
export function fittingFilter(
  rows: readonly TimingRow[],
  { mic, against }: PairFilter,
  all: readonly Id[],
): PairFilter {
  const one = mic !== null && timedMics(rows, all).includes(mic) ? mic : null;
  const other = against !== null && partnersOf(rows, one, all).includes(against) ? against : null;
  return { mic: one, against: other };
}
