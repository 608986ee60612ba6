import { micStandingIn } from '../../report/standingIn.ts';
import { ClearSpot } from '../clearSpot/ClearSpot.tsx';
import { RemedyOffer } from '../findings/RemedyOffer.tsx';
import { titleOf } from '../panel/titleOf.ts';
import { usePanel } from '../panel/usePanel.ts';
import type { FindingRow } from '../panel/worstFirst.ts';
import { isClearance, targetsOf } from '../panel/worstFirst.ts';
import { useOpen } from '../parts/useOpen.ts';
import { StaleList } from '../signOff/StaleList.tsx';
import { clearancePlace, clearanceWords } from '../words/clearanceWords.ts';
import { findingWords } from '../words/findingWords.ts';
import { capitalised } from '../words/nameOf.ts';

/** The whole of one finding: what, where, what to do, and the way to the numbers. */
export function FindingMore({ row }: { readonly row: FindingRow }) {
  const { layout, report } = useOpen();
  const panel = usePanel();
  const text = row.finding && findingWords(row.finding, layout, report.clearances);
  const place = row.kind === 'mic' ? clearancePlace(row.row, layout) : undefined;
  const what =
    row.kind === 'finding'
      ? text?.detail
      : row.row.verdict === 'clear'
        ? undefined
        : row.finding && text && !isClearance(row.finding)
          ? `${text.title}. ${text.detail}`
          : `${capitalised(clearanceWords(row.row, layout))}.`;
  const mic = row.kind === 'mic' ? row.row.mic : micStandingIn(row.finding);
  const targets = targetsOf(row, layout);
  const isOfStock = row.finding?.code === 'stock-missing';
  return (
    <div className="line-more">
      {what !== undefined && <p>{what}</p>}
      {place !== undefined && <p className="soft">{capitalised(place)}.</p>}
      {(row.finding?.code === 'sign-off-stale' || row.finding?.code === 'sign-off-reworked') && (
        <StaleList />
      )}
      {text && <p className="next">{text.next}</p>}
      {mic !== undefined && <ClearSpot mic={mic} />}
      {row.finding && <RemedyOffer finding={row.finding} />}
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
