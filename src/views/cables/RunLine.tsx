import { useId } from 'react';
import type { RunRow } from '../../report/report.ts';
import { showLength, showLongLength } from '../../units/lengthText.ts';
import { useOpen } from '../parts/useOpen.ts';
import { listed, nameOf } from '../words/nameOf.ts';
import { inputWords, runPartWords, stockWords } from '../words/runWords.ts';

interface RunLineProps {
  readonly run: RunRow;
  readonly shown: boolean;
  readonly onToggle: () => void;
}

/** One run; tapped, it shows its parts. */
export function RunLine({ run, shown, onToggle }: RunLineProps) {
  const { layout } = useOpen();
  const moreId = useId();
  return (
    <li className={shown ? 'line shown' : 'line'}>
      <button
        type="button"
        className="line-button"
        aria-expanded={shown}
        aria-controls={moreId}
        onClick={onToggle}
      >
        <span className="input-number">
          <span className="spoken">{inputWords(run.input)}: </span>
          <span aria-hidden="true">{run.input ?? '–'}</span>
        </span>
        <span className="line-text">
          <span className="line-name">{nameOf(layout, run.mic)}</span>
          <span className={run.stock === null ? 'line-note struck' : 'line-note'}>
            {stockWords(run, layout)}
          </span>
        </span>
        <span className="line-number">{showLongLength(run.total, layout.units)}</span>
      </button>
      <div id={moreId} hidden={!shown}>
        {shown && <RunParts run={run} />}
      </div>
    </li>
  );
}

function RunParts({ run }: { readonly run: RunRow }) {
  const { layout } = useOpen();
  return (
    <div className="line-more">
      <table className="parts">
        <caption className="spoken">Parts of the run of {nameOf(layout, run.mic)}</caption>
        <tbody>
          {run.parts.map((part) => (
            <tr key={`${part.what} ${part.length}`}>
              <th scope="row">{runPartWords(part.what)}</th>
              <td>{showLength(part.length, layout.units)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Total</th>
            <td>{showLength(run.total, layout.units)}</td>
          </tr>
        </tfoot>
      </table>
      {run.through.length > 0 && (
        <p className="struck">
          No free way: it passes through {listed(run.through.map((id) => nameOf(layout, id)))}.
        </p>
      )}
    </div>
  );
}
