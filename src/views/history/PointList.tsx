import { useState } from 'react';
import type { HistoryRow } from '../../session/library.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { useSeen } from '../parts/useSeen.ts';
import { pointKindWords } from '../words/historyWords.ts';
import { clockWords, dayWords } from '../words/timeWords.ts';
import type { HistoryView } from './useHistory.ts';

/** Points shown at once; the rest comes by a button. */
const PAGE = 60;

interface PointListProps {
  readonly rows: readonly HistoryRow[];
  readonly view: HistoryView;
}

/** The points by day, the last one first. */
export function PointList({ rows, view }: PointListProps) {
  const [onlyKept, setOnlyKept] = useState(false);
  const [most, setMost] = useState(PAGE);
  const wanted = rows.filter(
    ({ name, signed, withheld, tip }) =>
      !onlyKept || name !== '' || (signed ?? withheld) !== null || tip !== null,
  );
  const shown = wanted.slice(0, most);
  const beforeOf = new Map(rows.map((row, index) => [row, rows[index + 1]]));
  const days = [...new Set(shown.map(({ at }) => dayWords(at)))];
  return (
    <>
      <CheckField label="Only named and signed points" checked={onlyKept} onSet={setOnlyKept} />
      {days.map((day) => (
        <div key={day} className="history-day">
          <h3>{day}</h3>
          <ul className="lines framed">
            {shown
              .filter(({ at }) => dayWords(at) === day)
              .map((row) => (
                <PointLine key={row.revision} row={row} before={beforeOf.get(row)} view={view} />
              ))}
          </ul>
        </div>
      ))}
      {wanted.length > shown.length && (
        <button type="button" onClick={() => setMost(most + PAGE)}>
          Show {Math.min(PAGE, wanted.length - shown.length)} more of {wanted.length}
        </button>
      )}
    </>
  );
}

interface PointLineProps {
  readonly row: HistoryRow;
  /** The point before it; none for the oldest. */
  readonly before: HistoryRow | undefined;
  readonly view: HistoryView;
}

function PointLine({ row, before, view }: PointLineProps) {
  const line = useSeen<HTMLLIElement>(() => before && view.hints.want(row, before));
  const hint = before ? view.hints.known.get(row.revision) : 'The first point there is';
  const title = pointKindWords(row, hint);
  const isNow = row.tip === 'holds';
  const isShown = view.looked === null ? isNow : view.looked.row.revision === row.revision;
  return (
    <li ref={line} className={isShown ? 'line shown' : 'line'}>
      <button
        type="button"
        className="line-button"
        aria-pressed={isShown}
        onClick={() => view.look(row)}
      >
        <span className="line-text">
          <span className="line-name">{title}</span>
          {hint !== undefined && hint !== title && <span className="line-note">{hint}</span>}
          {isNow && <span className="line-note">As it is now</span>}
        </span>
        <span className="line-number">
          {clockWords(row.at)}:{String(new Date(row.at).getSeconds()).padStart(2, '0')}
        </span>
      </button>
    </li>
  );
}
