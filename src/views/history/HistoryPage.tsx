import { useContext } from 'react';
import { DrawingContext } from '../pages/DrawingContext.ts';
import { momentWords, pointKindWords } from '../words/historyWords.ts';
import { Changes } from './Changes.tsx';
import { NamePoint } from './NamePoint.tsx';
import { PointList } from './PointList.tsx';
import { type HistoryView, useHistory } from './useHistory.ts';

/** Every point of the open layout: looked at, compared, named, brought back. Nothing of it is ever overwritten. */
export function HistoryPage() {
  const view = useHistory();
  return (
    <div className="history">
      <section className="history-points" aria-labelledby="points-title">
        <h2 id="points-title">Points</h2>
        <p className="small soft">
          Every save makes one, and nothing is overwritten. Points that nobody named all stay for a
          day, then one an hour for 30 days, then one a day; named and signed ones stay for good.
        </p>
        <p role="status" className="small">
          {view.task.failure === '' ? view.done : view.task.failure}
        </p>
        {view.rows === null ? (
          <p>Reading the history…</p>
        ) : (
          <PointList rows={view.rows} view={view} />
        )}
      </section>
      <Looked view={view} />
    </div>
  );
}

/** What is looked at, on the plan, with what differs. */
function Looked({ view }: { readonly view: HistoryView }) {
  const drawing = useContext(DrawingContext);
  const { looked } = view;
  return (
    <section className="history-looked" aria-labelledby="looked-title">
      <h2 id="looked-title">
        {looked === null ? 'As it is now' : `As it was ${momentWords(looked.row.at)}`}
      </h2>
      {looked === null ? (
        <NowActions view={view} />
      ) : (
        <>
          <p>
            {pointKindWords(looked.row, view.hints.known.get(looked.row.revision))}. Only looked at:
            the open layout is as it was.
          </p>
          <div className="page-buttons">
            <button
              type="button"
              className="primary"
              disabled={view.task.busy}
              onClick={view.bringBack}
            >
              Bring it back
            </button>
            <NamePoint row={looked.row} onName={(name) => view.name(looked.row, name)} />
            {looked.row.tip === 'aside' && (
              <button type="button" onClick={() => view.settle(looked.row)}>
                Leave that line aside
              </button>
            )}
          </div>
        </>
      )}
      <div className="history-plan" inert>
        {drawing}
      </div>
      {looked !== null && <Changes key={looked.row.revision} looked={looked} view={view} />}
    </section>
  );
}

function NowActions({ view }: { readonly view: HistoryView }) {
  const holds = view.rows?.find(({ tip }) => tip === 'holds');
  return (
    <>
      <p>Tap a point to look at it on the plan, and to see what differs from now.</p>
      {holds && (
        <div className="page-buttons">
          <NamePoint row={holds} onName={(name) => view.name(holds, name)} />
        </div>
      )}
    </>
  );
}
