import { useState } from 'react';
import { clearSetUp } from '../../layout/edit/setUp.ts';
import type { SetUpStep } from '../../report/placement/steps.ts';
import { edit, select, showPage } from '../../session/session.ts';
import { countByNeed } from '../panel/worstFirst.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { usePaper } from '../sheets/usePaper.ts';
import { usePrintPages } from '../sheets/usePrintPages.tsx';
import { useSheets } from '../sheets/useSheets.ts';
import { counted } from '../words/nameOf.ts';

interface SetUpHeadProps {
  readonly steps: readonly SetUpStep[];
  readonly onReset: () => void;
}

/** How far it has come, the list on paper, and the way to start again. */
export function SetUpHead({ steps, onReset }: SetUpHeadProps) {
  const { layout, report } = useOpen();
  const toSolve = countByNeed(report).solve;
  const [asking, setAsking] = useState(false);
  const { paper } = usePaper();
  const sheetOf = useSheets(paper);
  const { printed, printPages } = usePrintPages();
  const done = steps.filter(({ key }) => layout.setUp.done.includes(key)).length;
  return (
    <header className="set-up-head">
      <div className="set-up-progress">
        <p id="set-up-done" role="status">
          {done === steps.length ? 'All done' : `${done} of ${steps.length} done`}
        </p>
        <progress aria-labelledby="set-up-done" value={done} max={steps.length} />
      </div>
      <div className="page-buttons">
        {toSolve > 0 && <ToSolve count={toSolve} />}
        <button type="button" onClick={() => printPages(sheetOf('setUp').pages)}>
          Print the list
        </button>
        <button
          type="button"
          className="danger"
          disabled={layout.setUp.done.length === 0}
          onClick={() => setAsking(true)}
        >
          Start again
        </button>
      </div>
      {printed}
      {asking && (
        <Dialog title="Take all ticks off?" onClose={() => setAsking(false)}>
          <p>Nothing else of the layout changes. Undo on the plan brings the ticks back.</p>
          <div className="page-buttons">
            <button
              type="button"
              className="danger"
              onClick={() => {
                edit('Start the set-up again', clearSetUp);
                setAsking(false);
                onReset();
              }}
            >
              Take all ticks off
            </button>
            <button type="button" onClick={() => setAsking(false)}>
              Keep them
            </button>
          </div>
        </Dialog>
      )}
    </header>
  );
}

/** The measures lead to the plan as it is: whoever builds it is told first what is wrong with it. Leads to the findings. */
function ToSolve({ count }: { readonly count: number }) {
  return (
    <button
      type="button"
      onClick={() => {
        // The panel begins with its findings, unless something is selected.
        select(null);
        showPage(null);
      }}
    >
      <VerdictMark verdict="struck" /> {counted(count, 'finding')} must be solved{' '}
      <Icon name="forward" />
    </button>
  );
}
