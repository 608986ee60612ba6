import { numberByCrossing } from '../../report/numberByCrossing.ts';
import { numberInputs } from '../../report/numberInputs.ts';
import { edit } from '../../session/session.ts';
import { BoxSpotFinder } from '../cables/BoxSpotFinder.tsx';
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
        <section className="group">
          <h3>Number the inputs</h3>
          <div className="buttons">
            <button
              type="button"
              onClick={() => edit('Number the inputs', (from) => numberInputs(from))}
            >
              By the input list
            </button>
            <button
              type="button"
              onClick={() => edit('Number the inputs', (from) => numberByCrossing(from))}
            >
              For least crossing
            </button>
          </div>
          <p className="field-hint">
            The input list stands in Patch: festival order, unless another was set by hand.
          </p>
        </section>
      )}
      <BoxSpotFinder />
      <CablingFields />
      <StockFields />
    </>
  );
}
