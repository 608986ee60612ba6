import { micsToLead } from '../../report/needsSpot.ts';
import type { Clearing } from '../../session/clearing.ts';
import { useClearSpots } from '../parts/useClearSpots.ts';
import { useOfferedOver } from '../parts/useOfferedOver.ts';
import { useOpen } from '../parts/useOpen.ts';
import { bestFoundWords, inTurnWords, stayWords } from '../words/clearSpotWords.ts';
import { counted, nameOf } from '../words/nameOf.ts';
import { inTheWayWords } from '../words/verdictWords.ts';
import { LeftMics } from './LeftMics.tsx';
import { MovedMic } from './MovedMic.tsx';
import { NewFindings } from './NewFindings.tsx';
import { OfferButtons } from './OfferButtons.tsx';
import { SearchWorking } from './SearchWorking.tsx';
import { useSearch } from './useSearch.ts';

/** All mics that are in the way, cleared in one step: looked for one after the other, summed up, taken or left. */
export function ClearEverything() {
  const { layout, report } = useOpen();
  const spots = useClearSpots();
  const search = useSearch(null);
  // What is only offered for one of them has cleared nothing yet, and is left when all are looked for.
  const offeredOver = useOfferedOver();
  const own = offeredOver ?? report;
  switch (search?.kind) {
    case 'working': {
      const { request, done, spent, found, again } = search;
      const now = again ?? request.mics[done];
      return (
        <SearchWorking
          text={inTurnWords(done, request.mics.length, {
            now: now === undefined ? '' : nameOf(layout, now),
            isAgain: again !== undefined,
            found,
          })}
          done={done + spent}
          of={request.mics.length}
          found={found}
        />
      );
    }
    case 'offered':
      return <Summary offer={search} />;
    case 'none':
      return (
        <section className="offer" aria-label="Clear all mics">
          <p role="status">
            <strong>No clear spot found.</strong>{' '}
            {search.left.length === 1 ? 'The mic stays as it is:' : 'All stay as they are:'}
          </p>
          <LeftMics left={search.left} />
        </section>
      );
    case 'failed':
      return <p role="alert">The search failed: {search.reason}</p>;
    default: {
      const mics = micsToLead(own);
      if (mics.length === 0) return null;
      return (
        <div className="section-actions">
          <button
            type="button"
            className="primary"
            onClick={() => spots.find({ mics, whole: true, label: 'Clear all mics' })}
          >
            Clear all mics: {inTheWayWords(own)}
            {offeredOver !== null && ' as it is now'}
          </button>
        </div>
      );
    }
  }
}

type Offer = Extract<Clearing, { kind: 'offered' }>;

function Summary({ offer }: { readonly offer: Offer }) {
  const { layout, report } = useOpen();
  const { before, moved, left } = offer;
  const unproven = bestFoundWords(moved, offer.unproven, layout);
  const rest = stayWords(
    left.map(({ mic }) => mic),
    report,
  );
  return (
    <section className="offer" aria-label="Clear all mics">
      <p role="status">
        <strong>{counted(moved.length, 'mic')} would move</strong>
        {rest && `; ${rest}`}.
      </p>
      <p className="small soft">Shown on the plan. Nothing is changed until you take it.</p>
      <ul className="plain-list">
        {moved.map((mic) => (
          <MovedMic key={mic} mic={mic} before={before} />
        ))}
      </ul>
      {left.length > 0 && (
        <>
          <p>Not cleared:</p>
          <LeftMics left={left} />
        </>
      )}
      {unproven !== '' && <p className="small soft">{unproven}</p>}
      <NewFindings before={before.report} />
      <OfferButtons take={moved.length === 1 ? 'Take it' : 'Take them all'} />
    </section>
  );
}
