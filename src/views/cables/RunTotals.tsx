import { useSession } from '../../session/session.ts';
import { showLongLength } from '../../units/lengthText.ts';
import { useOpen } from '../parts/useOpen.ts';
import { capitalised, counted, listed, nameOf } from '../words/nameOf.ts';
import { missingWords, takenWords } from '../words/runWords.ts';

/** All runs together: cable laid, what the loom makes of it, which stock cables they take and which are missing. */
export function RunTotals() {
  const { layout, report } = useOpen();
  const { totals, stock, loom, runs } = report;
  // While something is dragged the loom is laid in a hurry: its true lengths, but not the last ones.
  const isMoving = useSession(({ gesture }) => gesture !== null && !gesture.isOffer);
  const long = (length: number) => `${isMoving ? '≈ ' : ''}${showLongLength(length, layout.units)}`;
  const noWay = runs.filter(({ through }) => through.length > 0);
  return (
    <>
      <dl className="total">
        <div>
          <dt>Runs</dt>
          <dd>{runs.length}</dd>
        </div>
        <div>
          <dt>Cable laid</dt>
          <dd>{long(totals.cable)}</dd>
        </div>
        <div>
          <dt>Longest</dt>
          <dd>{long(totals.longest)}</dd>
        </div>
        <div>
          <dt>By the loom</dt>
          <dd>{long(totals.extra)}</dd>
        </div>
        <div>
          <dt>Lines on the floor</dt>
          <dd>{long(loom.laid)}</dd>
        </div>
        <div>
          <dt>Joins</dt>
          <dd>{stock.joins}</dd>
        </div>
        <div className="total-wide">
          <dt>Stock cables taken</dt>
          <dd>{capitalised(takenWords(report, layout))}</dd>
        </div>
        {stock.missing.length > 0 && (
          <div className="total-wide struck">
            <dt>Missing</dt>
            <dd>{missingWords(stock.missing, layout)}</dd>
          </div>
        )}
      </dl>
      {noWay.length > 0 && (
        <p className="struck" role="note">
          {counted(noWay.length, 'run')} without a free way:{' '}
          {listed(noWay.map(({ mic }) => nameOf(layout, mic)))}. Findings say what each passes
          through.
        </p>
      )}
      {!stock.isBest && (
        <p className="field-hint">
          There are too many ways of joining these cables to try them all: this plan serves, but a
          better one may exist.
        </p>
      )}
    </>
  );
}
