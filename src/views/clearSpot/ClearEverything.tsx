import type { Id } from '../../layout/fields.ts';
import type { Clearing } from '../../session/clearing.ts';
import { inTheWay, verdictCounts } from '../panel/worstFirst.ts';
import { useClearSpots } from '../parts/useClearSpots.ts';
import { useOfferedOver } from '../parts/useOfferedOver.ts';
import { useOpen } from '../parts/useOpen.ts';
import {
  BEST_FOUND,
  roomWords,
  spareWords,
  stayWords,
  whyNotWords,
} from '../words/clearSpotWords.ts';
import { moveRows } from '../words/moveRows.ts';
import { counted, nameOf, unbroken } from '../words/nameOf.ts';
import { inTheWayWords } from '../words/verdictWords.ts';
import { NewFindings } from './NewFindings.tsx';
import { OfferButtons } from './OfferButtons.tsx';
import { SearchWorking } from './SearchWorking.tsx';
import { SoundOfSpot } from './SoundOfSpot.tsx';
import { useSearch } from './useSearch.ts';

/** All mics that are in the way, cleared in one step: looked for one after the other, summed up, taken or left. */
export function ClearEverything() {
  const { report } = useOpen();
  const spots = useClearSpots();
  const search = useSearch(null);
  // What is only offered for one of them has cleared nothing yet, and is left when all are looked for.
  const own = useOfferedOver() ?? report;
  switch (search?.kind) {
    case 'working': {
      const of = search.request.mics.length;
      const text = `Looking for clear spots: ${search.done} of ${counted(of, 'mic')}…`;
      return <SearchWorking text={text} done={search.done} of={of} />;
    }
    case 'offered':
      return <Summary offer={search} />;
    case 'none':
      return (
        <p className="offer" role="status">
          <strong>None within reach.</strong> None of the mics in the way has a clear spot that its
          mount reaches. Each says what to try.
        </p>
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
            onClick={() => spots.find({ mics, whole: true, label: 'Clear everything' })}
          >
            Clear everything: {inTheWayWords(verdictCounts(own))}
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
  const rest = stayWords(
    left.map(({ mic }) => mic),
    report.clearances,
  );
  return (
    <section className="offer" aria-label="Clear everything">
      <p role="status">
        <strong>{counted(moved.length, 'mic')} would move</strong>
        {rest && `; ${rest}`}.
      </p>
      <p className="small soft">Shown on the plan. Nothing is changed until you take it.</p>
      <ul className="plain-list">
        {moved.map((mic) => (
          <MovedMic key={mic} mic={mic} offer={offer} />
        ))}
        {left.map(({ mic, why }) => (
          <li key={mic}>
            <strong>{nameOf(layout, mic)}</strong> stays as it is:{' '}
            {whyNotWords[why][0].toLowerCase()}.
          </li>
        ))}
      </ul>
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
  const changes = moveRows(old, now, layout.units).map(
    ({ what, to, by, toward }) =>
      `${what} ${by || to}${toward === undefined ? '' : `, to about ${toward}`}`,
  );
  return (
    <li>
      <strong>{nameOf(layout, mic)}</strong>:{' '}
      <span className="unbroken">{roomWords(was, before.layout)}</span> →{' '}
      <span className="unbroken">{roomWords(would, layout)}</span>
      {spare !== '' && `, ${spare}`}.{' '}
      <span className="soft">
        {unbroken(changes.join('; '))}. <SoundOfSpot mic={mic} before={before} />
        {unproven.includes(mic) && ` ${BEST_FOUND}`}
      </span>
    </li>
  );
}
