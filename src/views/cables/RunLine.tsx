import { useEffect, useId, useRef } from 'react';
import type { RunRow } from '../../report/report.ts';
import { showLength, showLongLength } from '../../units/lengthText.ts';
import { useOpen } from '../parts/useOpen.ts';
import { BoxInput } from '../patch/BoxInput.tsx';
import { listed, nameOf } from '../words/nameOf.ts';
import { loomWords, runPartWords, servedWords, signalWords } from '../words/runWords.ts';

interface RunLineProps {
  readonly run: RunRow;
  readonly shown: boolean;
  readonly onToggle: () => void;
}

/** One run; tapped, it shows its parts, and comes into view whole. */
export function RunLine({ run, shown, onToggle }: RunLineProps) {
  const { layout } = useOpen();
  const moreId = useId();
  const line = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (shown) line.current?.scrollIntoView({ block: 'nearest' });
  }, [shown]);
  const isShort = run.carried.length === 0 || run.through.length > 0;
  const notes = [
    ...(run.through.length > 0 ? ['no free way'] : []),
    servedWords(run, layout),
    loomWords(run, layout),
  ].filter((note) => note !== undefined);
  return (
    <li className={shown ? 'line shown' : 'line'} ref={line}>
      <button
        type="button"
        className="line-button"
        aria-expanded={shown}
        aria-controls={moreId}
        onClick={onToggle}
      >
        <BoxInput input={run.input} />
        <span className="line-text">
          <span className="line-name">{nameOf(layout, run.mic)}</span>
          <span className={isShort ? 'line-note struck' : 'line-note'}>{notes.join(' · ')}</span>
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
  const show = (length: number) => showLength(length, layout.units);
  const signal = signalWords(run, layout);
  return (
    <div className="line-more">
      <table className="parts">
        <caption className="spoken">Parts of the run of {nameOf(layout, run.mic)}</caption>
        <tbody>
          {run.parts.map((part) => (
            <tr key={`${part.what} ${part.length}`}>
              <th scope="row">{runPartWords(part.what)}</th>
              <td>{show(part.length)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Total</th>
            <td>{show(run.total)}</td>
          </tr>
          <tr className="soft">
            <th scope="row">Of it by the loom</th>
            <td>{show(run.extra)}</td>
          </tr>
        </tfoot>
      </table>
      {run.through.length > 0 && (
        <p className="struck">
          No free way: it passes through {listed(run.through.map((id) => nameOf(layout, id)))}.
        </p>
      )}
      {signal !== undefined && <p>{signal}</p>}
    </div>
  );
}
