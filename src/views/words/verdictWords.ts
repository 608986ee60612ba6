import type { ClearanceRow, Report } from '../../report/report.ts';
import { standingIn } from '../../report/standingIn.ts';
import { type Judged, showClearance, showInside } from '../../units/clearanceText.ts';
import { roundedDown, showLength } from '../../units/lengthText.ts';
import { counted } from './nameOf.ts';

export type Verdict = ClearanceRow['verdict'];

const words: Readonly<Record<Verdict, string>> = {
  clear: 'Clear',
  tight: 'Tight',
  struck: 'Struck',
};

/** The verdict as one word. */
export const verdictWord = (verdict: Verdict): string => words[verdict];

/** A verdict with what is said of it. */
interface SaidVerdict {
  readonly verdict: Verdict;
  readonly word: string;
}

/** A mic's verdict as it is shown: whatever room it has from what moves, one that stands in a drum is not clear. */
export const saidVerdict = (
  { mic, verdict }: ClearanceRow,
  report: Pick<Report, 'findings'>,
): SaidVerdict =>
  standingIn(report).has(mic)
    ? { verdict: 'struck', word: 'In the way' }
    : { verdict, word: verdictWord(verdict) };

/** How many of the mics told before stand in something: `1 mic of these stands in a drum or cymbal`. */
export const withinWords = (count: number): string =>
  `${counted(count, 'mic')} of these ${count === 1 ? 'stands' : 'stand'} in a drum or cymbal`;

/** How many mics are struck and tight: `1 struck, 2 tight`, without what none is. */
export const inTheWayWords = (counts: Readonly<Record<Verdict, number>>): string =>
  (['struck', 'tight'] as const)
    .filter((verdict) => counts[verdict] > 0)
    .map((verdict) => `${counts[verdict]} ${verdict}`)
    .join(', ');

/** The clearance as a person says it: `12 mm too close`, `38 mm away, 12 mm inside the margin`, `84 mm clear`. */
export function clearanceAmount(
  row: Pick<ClearanceRow, 'clearance' | 'verdict'>,
  judged: Judged,
): string {
  if (!Number.isFinite(row.clearance)) return 'nothing moves near it';
  const { units } = judged;
  if (row.verdict === 'struck') {
    return `${showLength(-roundedDown(row.clearance, units), units)} too close`;
  }
  const room = showClearance(row.clearance, judged);
  if (row.verdict === 'clear') return `${room} clear`;
  return `${room} away, ${showInside(row.clearance, judged)} inside the margin`;
}
