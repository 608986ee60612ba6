import {
  type Judgement,
  type Judging,
  judgementCounts,
  judgementOf,
  shownVerdict,
} from '../../report/judgement.ts';
import { needsSpot } from '../../report/needsSpot.ts';
import type { ClearanceRow, Report, Severity } from '../../report/report.ts';
import { type Judged, showClearance, showInside } from '../../units/clearanceText.ts';
import { roundedDown, showLength } from '../../units/lengthText.ts';

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

const judgements: Readonly<Record<Judgement, string>> = {
  ...words,
  'in-the-way': 'In the way',
  'not-held': "Won't hold",
  'near-player': 'Near the player',
};

/** What is said of a mic, in a word or two. */
export const judgementWord = (judgement: Judgement): string => judgements[judgement];

/** A verdict with what is said of it. */
interface SaidVerdict {
  readonly verdict: Verdict;
  readonly word: string;
}

/** What is said of a mic, and the verdict whose mark stands for it. */
export const saidVerdict = (row: ClearanceRow, report: Pick<Report, 'findings'>): SaidVerdict => ({
  verdict: shownVerdict(row, report),
  word: judgementWord(judgementOf(row, report)),
});

const TALLIED = ['struck', 'in-the-way', 'not-held', 'tight', 'near-player', 'clear'] as const;

/** How many mics there are of each judgement, the worst first; of those that can't stay only where there are any. */
export function tally(
  report: Judging,
): readonly { readonly judgement: Judgement; readonly count: number }[] {
  const counts = judgementCounts(report);
  return TALLIED.map((judgement) => ({ judgement, count: counts[judgement] })).filter(
    ({ judgement, count }) => count > 0 || judgement in words,
  );
}

/** `1 struck, 1 in the way, 0 tight, 7 clear`. */
export const tallyWords = (report: Judging): string =>
  tally(report)
    .map(({ judgement, count }) => `${count} ${judgementWord(judgement).toLowerCase()}`)
    .join(', ');

/** Of the mics that have to be led to clear spots how many there are of each judgement, the worst first, without what none has: the words are those of the tally. */
export function countsToLead(
  { clearances }: Pick<Report, 'clearances'>,
  report: Pick<Report, 'findings'>,
): readonly { readonly judgement: Judgement; readonly count: number }[] {
  const led = clearances.filter((row) => needsSpot(row, report));
  return tally({ clearances: led, findings: report.findings }).filter(({ count }) => count > 0);
}

/** What is said of the mics that have to be led to clear spots: `1 struck, 1 in the way, 2 tight`. */
export const inTheWayWords = (report: Judging): string =>
  countsToLead(report, report)
    .map(({ judgement, count }) => `${count} ${judgementWord(judgement).toLowerCase()}`)
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
