import type { Layout } from '../../layout/layout.ts';
import type { Judging } from '../../report/judgement.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { findingWords } from './findingWords.ts';
import { nameOf } from './nameOf.ts';
import { troublesOf } from './troubleWords.ts';
import { clearanceAmount, saidVerdict } from './verdictWords.ts';

/** `Snare top: Struck, 12 mm too close.`; of a mic that can't stay, `In the way: Snare top goes into Snare.` */
export function verdictNews(row: ClearanceRow, report: Judging, layout: Layout): string {
  const { word } = saidVerdict(row, report);
  const [why] = troublesOf(row, report);
  return why
    ? `${word}: ${findingWords(why, layout).title}.`
    : `${nameOf(layout, row.mic)}: ${word}, ${clearanceAmount(row, layout)}.`;
}

/** The news of every mic whose verdict is another than before; empty when none is. */
export function verdictChanges(before: Judging, after: Judging, layout: Layout): string {
  const old = new Map(before.clearances.map((row) => [row.mic, saidVerdict(row, before).word]));
  return after.clearances
    .filter((row) => old.get(row.mic) !== saidVerdict(row, after).word)
    .map((row) => verdictNews(row, after, layout))
    .join(' ');
}
