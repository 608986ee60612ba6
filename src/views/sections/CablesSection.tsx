import { numberInputs } from '../../layout/edit/inputs.ts';
import { edit } from '../../session/session.ts';
import { CablingFields } from '../cables/CablingFields.tsx';
import { RunList } from '../cables/RunList.tsx';
import { RunTotals } from '../cables/RunTotals.tsx';
import { StockFields } from '../cables/StockFields.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** Every run, the totals, and how cables are laid and chosen. */
export function CablesSection() {
  const { layout } = useOpen();
  return (
    <>
      <h2 className="spoken">Cables</h2>
      <RunTotals />
      <RunList />
      {layout.mics.length > 0 && (
        <div className="section-actions">
          <button
            type="button"
            onClick={() => edit('Number the inputs', (from) => numberInputs(from))}
          >
            Number the inputs
          </button>
          <p className="field-hint">
            In the usual festival order: kick, snare, hi-hat, toms, cymbals, overheads.
          </p>
        </div>
      )}
      <CablingFields />
      <StockFields />
    </>
  );
}
