import { useEffect, useRef, useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { clearanceAmount, verdictWord } from '../words/verdictWords.ts';
import { nameOf } from '../words/nameOf.ts';

/** Reads aloud which mics changed their verdict, once a gesture has ended. */
export function VerdictNews() {
  const { layout, report } = useOpen();
  const quiet = useSession((state) => state.gesture === null);
  const before = useRef({ id: layout.id, rows: report.clearances });
  const [news, setNews] = useState('');
  useEffect(() => {
    if (!quiet) return;
    if (before.current.id === layout.id) {
      const changed = verdictChanges(before.current.rows, report.clearances, layout);
      if (changed !== '') setNews(changed);
    }
    before.current = { id: layout.id, rows: report.clearances };
  }, [quiet, layout, report]);
  return (
    <p className="spoken" role="status" data-testid="verdict-news">
      {news}
    </p>
  );
}

/** `Snare top: Struck, 12 mm too close.` for every mic whose verdict is another now. */
export function verdictChanges(
  before: readonly ClearanceRow[],
  after: readonly ClearanceRow[],
  layout: Layout,
): string {
  const old = new Map(before.map((row) => [row.mic, row.verdict]));
  return after
    .filter((row) => old.get(row.mic) !== row.verdict)
    .map((row) => {
      const amount = clearanceAmount(row, layout.margin, layout.units);
      return `${nameOf(layout, row.mic)}: ${verdictWord(row.verdict)}, ${amount}.`;
    })
    .join(' ');
}
