import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { nameOf } from './nameOf.ts';
import { clearanceAmount, verdictWord } from './verdictWords.ts';

/** `Snare top: Struck, 12 mm too close.` for every mic whose verdict is another than before; empty when none is. */
export function verdictChanges(
  before: readonly ClearanceRow[],
  after: readonly ClearanceRow[],
  layout: Layout,
): string {
  const old = new Map(before.map((row) => [row.mic, row.verdict]));
  return after
    .filter((row) => old.get(row.mic) !== row.verdict)
    .map((row) => {
      const amount = clearanceAmount(row, layout);
      return `${nameOf(layout, row.mic)}: ${verdictWord(row.verdict)}, ${amount}.`;
    })
    .join(' ');
}
