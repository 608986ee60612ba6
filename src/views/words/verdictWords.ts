import type { ClearanceRow, Report, Severity } from '../../report/report.ts';
import { type Judging, shownVerdict, standingIn } from '../../report/standingIn.ts';
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

/** The verdict whose mark stands for a finding. */
export const severityVerdict = (severity: Severity): 'struck' | 'tight' =>
  severity === 'stop' ? 'struck' : 'tight';

/** A verdict with what is said of it. */
interface SaidVerdict {
  readonly verdict: Verdict;
  readonly word: string;
}

/** A mic's verdict as it is shown: whatever room it has from what moves, one that stands in a drum is not clear. */
export const saidVerdict = (row: ClearanceRow, report: Pick<Report, 'findings'>): SaidVerdict => {
  const verdict = shownVerdict(row, report);
  const word = standingIn(report).has(row.mic) ? 'In the way' : verdictWord(verdict);
  return { verdict, word };
};

/** How many of the mics told before stand in something: `1 mic of these stands in a drum or cymbal`. */
export const withinWords = (count: number): string =>
  `${counted(count, 'mic')} of these ${count === 1 ? 'stands' : 'stand'} in a drum or cymbal`;

/** How many mics are struck, tight, and in a drum or cymbal with room from what moves: `1 struck, 2 tight, 1 in the way`, without what none is. */
export function inTheWayWords(report: Judging): string {
  const within = standingIn(report);
  const wordOf = ({ mic, verdict }: ClearanceRow): string =>
    verdict === 'clear' && within.has(mic) ? 'in the way' : verdict;
  const words = report.clearances.map(wordOf);
  return ['struck', 'tight', 'in the way']
    .map((word) => ({ word, count: words.filter((each) => each === word).length }))
    .filter(({ count }) => count > 0)
    .map(({ word, count }) => `${count} ${word}`)
    .join(', ');
}

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
