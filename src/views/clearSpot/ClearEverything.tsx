import type { Id } from '../../layout/fields.ts';
import type { Clearing } from '../../session/clearing.ts';
import { inTheWay } from '../panel/worstFirst.ts';
import { useClearSpots } from '../parts/useClearSpots.ts';
import { useOfferedOver } from '../parts/useOfferedOver.ts';
import { useOpen } from '../parts/useOpen.ts';
import {
  BEST_FOUND,
  inTurnWords,
  roomWords,
  spareWords,
  stayWords,
} from '../words/clearSpotWords.ts';
import { moveRows } from '../words/moveRows.ts';
import { moveToDo } from '../words/moveToDo.ts';
import { capitalised, counted, nameOf, unbroken } from '../words/nameOf.ts';
import { inTheWayWords } from '../words/verdictWords.ts';
import { LeftMics } from './LeftMics.tsx';
import { NewFindings } from './NewFindings.tsx';
import { OfferButtons } from './OfferButtons.tsx';
import { SearchWorking } from './SearchWorking.tsx';
import { SoundOfSpot } from './SoundOfSpot.tsx';
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
      const { request, done, spent, found } = search;
      const now = request.mics[done];
      return (
        <SearchWorking
          text={inTurnWords(done, request.mics.length, {
            now: now === undefined ? '' : nameOf(layout, now),
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
      const mics = inTheWay(own);
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
  const { report } = useOpen();
  const { before, moved, left } = offer;
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
          <MovedMic key={mic} mic={mic} offer={offer} />
        ))}
      </ul>
      {left.length > 0 && (
        <>
          <p>Not cleared:</p>
          <LeftMics left={left} />
        </>
      )}
      <NewFindings before={before.report} />
      <OfferButtons take={moved.length === 1 ? 'Take it' : 'Take them all'} />
    </section>
  );
}

function MovedMic({
  mic,
  offer: { before, unproven },
}: {
  readonly mic: Id;
  readonly offer: Offer;
}) {
  const { layout, report } = useOpen();
  const old = before.layout.mics.find(({ id }) => id === mic);
  const now = layout.mics.find(({ id }) => id === mic);
  const was = before.report.clearances.find((row) => row.mic === mic);
  const would = report.clearances.find((row) => row.mic === mic);
  if (!old || !now || !was || !would) return null;
  const spare = spareWords(would, layout);
  const changes = moveRows(old, now, layout.units).map(({ said }) => said);
  return (
    <li>
      <strong>{nameOf(layout, mic)}</strong>:{' '}
      <span className="unbroken">{roomWords(was, before)}</span> →{' '}
      <span className="unbroken">{roomWords(would, { layout, report })}</span>
      {spare !== '' && `, ${spare}`}. {unbroken(moveToDo(old, now, layout.units))}{' '}
      <span className="soft">
        {unbroken(capitalised(changes.join('; ')))}. <SoundOfSpot mic={mic} before={before} />
        {unproven.includes(mic) && ` ${BEST_FOUND}`}
      </span>
    </li>
  );
}
