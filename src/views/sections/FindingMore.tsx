import { isClearance, whyNot } from '../../report/judgement.ts';
import type { Finding } from '../../report/report.ts';
import { ClearSpot } from '../clearSpot/ClearSpot.tsx';
import { ClearanceNext } from '../findings/ClearanceNext.tsx';
import { FindingBody } from '../findings/FindingBody.tsx';
import { NextStep } from '../findings/NextStep.tsx';
import { titleOf } from '../panel/titleOf.ts';
import { usePanel } from '../panel/usePanel.ts';
import type { FindingRow } from '../panel/worstFirst.ts';
import { targetsOf } from '../panel/worstFirst.ts';
import { useOpen } from '../parts/useOpen.ts';
import { StaleList } from '../signOff/StaleList.tsx';
import { clearancePlace, clearanceWords, movingWords } from '../words/clearanceWords.ts';
import { findingWords } from '../words/findingWords.ts';
import { capitalised } from '../words/nameOf.ts';
import { unreachedWords } from '../words/reachWords.ts';
import { troublesOf } from '../words/troubleWords.ts';

/** The whole of one line: what, where, what to do, and the way to the numbers. */
export function FindingMore({ row }: { readonly row: FindingRow }) {
  const { layout } = useOpen();
  const panel = usePanel();
  const targets = targetsOf(row, layout);
  const isOfStock = row.kind === 'finding' && row.finding.code === 'stock-missing';
  return (
    <div className="line-more">
      {row.kind === 'mic' ? <MicMore line={row} /> : <OtherMore finding={row.finding} />}
      <div className="buttons">
        {isOfStock && <StockButtons />}
        {!isOfStock &&
          targets.slice(0, 2).map((selection) => (
            <button
              key={'id' in selection ? selection.id : selection.kind}
              type="button"
              onClick={() => panel.open(selection)}
            >
              Adjust {titleOf(selection, layout)}
            </button>
          ))}
      </div>
    </div>
  );
}

function OtherMore({ finding }: { readonly finding: Finding }) {
  const { layout, report } = useOpen();
  const { code } = finding;
  const { detail, next } = findingWords(finding, layout, report.clearances);
  return (
    <>
      <p>{detail}</p>
      {(code === 'sign-off-stale' || code === 'sign-off-reworked') && <StaleList />}
      <NextStep finding={finding} next={next} />
    </>
  );
}

/** Why a mic can't stay, or where it comes near to what moves, in full. */
function MicMore({
  line: { row, findings },
}: {
  readonly line: Extract<FindingRow, { kind: 'mic' }>;
}) {
  const { layout, report } = useOpen();
  const isRoom = troublesOf(row, report).length === 0;
  const why = whyNot(row.mic, report);
  const room = findings.find(isClearance);
  const place = clearancePlace(row, layout);
  const unreached = unreachedWords(row, report, layout);
  return (
    <>
      {isRoom && row.verdict !== 'clear' && <p>{capitalised(clearanceWords(row, layout))}.</p>}
      {isRoom && place !== undefined && <p className="soft">{capitalised(place)}.</p>}
      {isRoom && room && <ClearanceNext row={row} finding={room} />}
      {why.map((finding) =>
        findings.includes(finding) ? (
          <div key={finding.key} className="verdict-cause">
            <FindingBody finding={finding} />
          </div>
        ) : (
          // Told in full with the other of the two.
          <p key={finding.key}>{findingWords(finding, layout).title}.</p>
        ),
      )}
      <ClearSpot mic={row.mic} />
      {!isRoom && <p className="soft">{movingWords(row, why, layout)}</p>}
      {unreached !== '' && <p className="soft">{unreached}</p>}
    </>
  );
}

/** Cables that are missing are put right where they are listed, or by a box that stands nearer. */
function StockButtons() {
  const panel = usePanel();
  return (
    <>
      <button type="button" onClick={() => panel.goTo('cables', 'stock')}>
        Cables you carry
      </button>
      <button type="button" onClick={() => panel.goTo('cables', 'boxSpots')}>
        Best spots for the box
      </button>
    </>
  );
}
