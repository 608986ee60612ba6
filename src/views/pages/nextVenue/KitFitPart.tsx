import { useMemo } from 'react';
import { moveKit } from '../../../layout/edit/stage.ts';
import { type FitPlace, fitOf } from '../../../report/fit.ts';
import { edit } from '../../../session/session.ts';
import { showLength } from '../../../units/lengthText.ts';
import { Icon } from '../../parts/Icon.tsx';
import { useOpen } from '../../parts/useOpen.ts';
import { fitPlaceWords, noFitWords } from '../../words/fitWords.ts';
import { capitalised, nameOf } from '../../words/nameOf.ts';
import { UndoButtons } from '../../workspace/UndoButtons.tsx';

/** What stands over the deck's edge, and the smallest move of the whole kit that brings all of it onto the deck. */
export function KitFitPart() {
  const { layout, report } = useOpen();
  const fit = useMemo(() => fitOf(layout, report), [layout, report]);
  const { units, deck } = layout;
  const over = report.findings.filter(
    ({ code }) => code === 'piece-off-deck' || code === 'base-off-deck',
  );
  const offers = [
    ...(fit.shifted ? [fit.shifted] : []),
    ...(fit.turned ? [fit.turned] : []),
    ...(fit.both && !fit.shifted ? [fit.both] : []),
  ];
  const take = (place: FitPlace) =>
    edit('Fit the kit on the deck', (from) => moveKit(from, place.kit));
  return (
    <section className="venue-part">
      <h2>On the deck</h2>
      {fit.beyond === 0 ? (
        <p role="status">The whole kit rests on the deck.</p>
      ) : (
        <>
          <ul className="stale-list">
            {over.map(({ key, about, numbers }) => (
              <li key={key}>
                {capitalised(nameOf(layout, about[0] ?? ''))}: over the edge by{' '}
                {showLength(Math.ceil(numbers['beyond'] ?? 0), units)}
              </li>
            ))}
          </ul>
          {offers.length === 0 && <p>{noFitWords(fit, units)}</p>}
          <div className="buttons">
            {offers.map((place, index) => (
              <button
                key={`${place.shift} ${place.turn}`}
                type="button"
                className={index === 0 ? 'primary' : undefined}
                onClick={() => take(place)}
              >
                <Icon name="target" /> {fitPlaceWords(place, deck.kit, units)}
              </button>
            ))}
          </div>
        </>
      )}
      <UndoButtons />
    </section>
  );
}
