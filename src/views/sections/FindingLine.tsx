import { useId } from 'react';
import type { Finding } from '../../report/report.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { usePanel } from '../panel/usePanel.ts';
import type { FindingRow } from '../panel/worstFirst.ts';
import { targetsOf } from '../panel/worstFirst.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { findingWords } from '../words/findingWords.ts';
import { movementWords } from '../words/movementWords.ts';
import { nameOf } from '../words/nameOf.ts';
import { troublesWords } from '../words/troubleWords.ts';
import { saidVerdict } from '../words/verdictWords.ts';
import { FindingMore } from './FindingMore.tsx';

interface FindingLineProps {
  readonly row: FindingRow;
  readonly shown: boolean;
}

/** One line of the list; tapped, it is shown on the plan and says the rest. */
export function FindingLine({ row, shown }: FindingLineProps) {
  const { layout } = useOpen();
  const panel = usePanel();
  const moreId = useId();
  const toggle = () => {
    if (shown) panel.point(null, null);
    else panel.point(row.key, targetsOf(row, layout)[0] ?? null);
  };
  return (
    <li className={shown ? 'line shown' : 'line'}>
      <button
        type="button"
        className="line-button"
        aria-expanded={shown}
        aria-controls={moreId}
        onClick={toggle}
      >
        {row.kind === 'mic' ? <MicSummary row={row} /> : <FindingSummary finding={row.finding} />}
      </button>
      <div id={moreId} hidden={!shown}>
        {shown && <FindingMore row={row} />}
      </div>
    </li>
  );
}

function MicSummary({ row: { row } }: { readonly row: Extract<FindingRow, { kind: 'mic' }> }) {
  const { layout, report } = useOpen();
  const said = saidVerdict(row, report);
  const troubles = troublesWords(row, report, layout);
  return (
    <>
      <VerdictMark verdict={said.verdict} />
      <span className="line-text">
        <span className="line-name">{nameOf(layout, row.mic)}</span>
        <span className="line-note">
          <span className={said.verdict}>{said.word}</span>
          {troubles !== '' && ` · ${troubles}`}
          {troubles === '' && row.nearest && ` · ${movementWords(row.nearest, layout)}`}
        </span>
      </span>
      {troubles === '' && (
        <span className="line-number">{showClearance(row.clearance, layout)}</span>
      )}
    </>
  );
}

const severityWords: Readonly<Record<Finding['severity'], string>> = {
  stop: 'Must be solved',
  warn: 'Should be looked at',
  note: 'Good to know',
};

function FindingSummary({ finding }: { readonly finding: Finding }) {
  const { layout } = useOpen();
  return (
    <>
      <span className={`severity ${finding.severity}`}>
        <Icon name={finding.severity === 'note' ? 'target' : 'alert'} />
      </span>
      <span className="line-text">
        <span className="line-name">{findingWords(finding, layout).title}</span>
        <span className="line-note">{severityWords[finding.severity]}</span>
      </span>
    </>
  );
}
