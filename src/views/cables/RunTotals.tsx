import { showLongLength } from '../../units/lengthText.ts';
import { useOpen } from '../parts/useOpen.ts';

/** All runs together: cable laid, the longest run, and how many stock cables of each length they take. */
export function RunTotals() {
  const { layout, report } = useOpen();
  const { cable, longest, stock } = report.totals;
  const taken = stock
    .map(({ length, count }) => `${count} × ${showLongLength(length, layout.units)}`)
    .join(', ');
  return (
    <dl className="total">
      <div>
        <dt>Runs</dt>
        <dd>{report.runs.length}</dd>
      </div>
      <div>
        <dt>Cable laid</dt>
        <dd>{showLongLength(cable, layout.units)}</dd>
      </div>
      <div>
        <dt>Longest</dt>
        <dd>{showLongLength(longest, layout.units)}</dd>
      </div>
      <div className="total-wide">
        <dt>Stock cables taken</dt>
        <dd>{taken === '' ? 'None' : taken}</dd>
      </div>
    </dl>
  );
}
