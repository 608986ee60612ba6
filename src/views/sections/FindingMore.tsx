import { selectionOf } from '../panel/worstFirst.ts';
import type { FindingRow } from '../panel/worstFirst.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { clearancePlace, clearanceWords } from '../words/clearanceWords.ts';
import { findingWords } from '../words/findingWords.ts';
import { capitalised, nameOf } from '../words/nameOf.ts';

/** The whole of one finding: what, where, what to do, and the way to the numbers. */
export function FindingMore({ row }: { readonly row: FindingRow }) {
  const { layout, report } = useOpen();
  const panel = usePanel();
  const text = row.finding && findingWords(row.finding, layout, report.clearances);
  const about = row.kind === 'mic' ? [row.row.mic] : row.finding.about;
  const place = row.kind === 'mic' ? clearancePlace(row.row, layout) : undefined;
  const what =
    row.kind === 'finding'
      ? text?.detail
      : row.row.verdict === 'clear'
        ? undefined
        : `${capitalised(clearanceWords(row.row, layout))}.`;
  const targets = about
    .map((id) => selectionOf([id], layout))
    .filter((selection) => selection !== null);
  return (
    <div className="line-more">
      {what !== undefined && <p>{what}</p>}
      {place !== undefined && <p className="soft">{capitalised(place)}.</p>}
      {text && <p className="next">{text.next}</p>}
      <div className="buttons">
        {targets.slice(0, 2).map((selection) => (
          <button key={selection.id} type="button" onClick={() => panel.open(selection)}>
            Adjust {nameOf(layout, selection.id)}
          </button>
        ))}
      </div>
    </div>
  );
}
