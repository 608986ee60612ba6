import { findMicClass } from '../../layout/catalogue/micClasses.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { useSession } from '../../session/session.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { mountWords } from '../words/kindWords.ts';
import { troublesWords } from '../words/troubleWords.ts';
import { saidVerdict } from '../words/verdictWords.ts';

/** One mic with class, mount and verdict; tapped, its numbers open. */
export function MicLine({ mic }: { readonly mic: Mic }) {
  const { layout, report } = useOpen();
  const panel = usePanel();
  const selection = useSession((state) => state.selection);
  const isSelected = selection?.kind === 'mic' && selection.id === mic.id;
  const row = report.clearances.find((each) => each.mic === mic.id);
  const said = row && saidVerdict(row, report);
  const troubles = row ? troublesWords(row, report, layout) : '';
  const className = findMicClass(layout, mic.micClass)?.name ?? mic.micClass;
  return (
    <li className={isSelected ? 'line shown' : 'line'}>
      <button
        type="button"
        className="line-button"
        onClick={() => panel.open({ kind: 'mic', id: mic.id })}
      >
        {said && <VerdictMark verdict={said.verdict} />}
        <span className="line-text">
          <span className="line-name">{mic.name}</span>
          <span className="line-note">
            {className} · {mountWords(mic.mount)}
          </span>
          {said && troubles !== '' && (
            <span className="line-note">
              <span className={said.verdict}>{said.word}</span> · {troubles}
            </span>
          )}
        </span>
        {row && said && troubles === '' && (
          <span className="line-number">
            <span className="spoken">{said.word}, </span>
            {showClearance(row.clearance, layout)}
          </span>
        )}
      </button>
    </li>
  );
}
