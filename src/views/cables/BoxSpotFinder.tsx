import { moveBox } from '../../layout/edit/stage.ts';
import type { Layout } from '../../layout/layout.ts';
import type { FoundSpot } from '../../report/boxSpots.ts';
import {
  type BoxSearch,
  bestSpots,
  compareSpotsBy,
  SPOT_LETTERS,
  type SpotMeasure,
  useBoxSearch,
} from '../../session/boxSearch.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { useBroughtUp } from '../panel/usePanel.ts';
import { useBoxSpots } from '../parts/useBoxSpots.ts';
import { useOpen } from '../parts/useOpen.ts';
import { capitalised, counted } from '../words/nameOf.ts';
import {
  spotGainWords,
  spotNeedWords,
  spotPlaceWords,
  spotTakenWords,
} from '../words/spotWords.ts';

const MEASURES: readonly { readonly value: SpotMeasure; readonly text: string }[] = [
  { value: 'cable', text: 'Least cable' },
  { value: 'longest', text: 'Shortest longest run' },
];

/** Where the box would stand best along the edges of the deck: looked for beside the page, listed, drawn on the plan, taken by one tap. */
export function BoxSpotFinder() {
  const finder = useBoxSpots();
  const { current } = useBoxSearch();
  const heading = useBroughtUp('boxSpots');
  return (
    <section className="group" aria-label="Where the box stands best">
      <h3 ref={heading} tabIndex={-1}>
        Where the box stands best
      </h3>
      {current === null ? (
        <>
          <p className="field-hint">
            Along the edges of the deck, off what stands there and off the way to the stairs.
          </p>
          <button type="button" onClick={() => finder.find()}>
            Find the best spots
          </button>
        </>
      ) : (
        <Search search={current} />
      )}
    </section>
  );
}

function Search({ search }: { readonly search: BoxSearch }) {
  const finder = useBoxSpots();
  switch (search.kind) {
    case 'working':
      return (
        <div className="search-working">
          <p role="status">
            Looking at the edges: {search.done} of {counted(search.of, 'spot')}…
          </p>
          <progress aria-label="Search for box spots" value={search.done} max={search.of} />
          <button type="button" onClick={() => finder.stop()}>
            Stop
          </button>
        </div>
      );
    case 'failed':
      return <p role="alert">The search failed: {search.reason}</p>;
    case 'found':
      return <Found search={search} />;
  }
}

function Found({ search: { spots } }: { readonly search: Extract<BoxSearch, { kind: 'found' }> }) {
  const finder = useBoxSpots();
  const { by } = useBoxSearch();
  const best = bestSpots(spots, by);
  return (
    <>
      {best.length === 0 ? (
        <p role="status">
          <strong>None.</strong> No edge has room for the box off everything that stands there.
        </p>
      ) : (
        <>
          <Choice label="Best by" value={by} options={MEASURES} onChoose={compareSpotsBy} />
          <ul className="lines" aria-label="Best spots for the box">
            {best.map((spot, place) => (
              <SpotLine key={`${spot.edge} ${spot.along}`} spot={spot} place={place} />
            ))}
          </ul>
          <Taken best={best} />
          <p className="field-hint">
            On the plan the larger a dot at the edge, the better the spot. Single ways: every run on
            its own shortest way; what the loom adds comes on top.
          </p>
        </>
      )}
      <button type="button" onClick={() => finder.stop()}>
        Close
      </button>
    </>
  );
}

/** Says that a spot was taken, and what it came to; its place on the screen stays, so that it is read out. */
function Taken({ best }: { readonly best: readonly FoundSpot[] }) {
  const { layout, report } = useOpen();
  const letter = SPOT_LETTERS[best.findIndex((spot) => isBoxAt(layout, spot))];
  return (
    <p role="status" className="spot-taken">
      {letter !== undefined && `${spotTakenWords(letter, report, layout)}.`}
    </p>
  );
}

function isBoxAt(layout: Layout, spot: FoundSpot): boolean {
  const to = moveBox(layout, spot.box).box;
  const { box } = layout;
  return box.x === to.x && box.y === to.y && box.turn === to.turn;
}

function SpotLine({ spot, place }: { readonly spot: FoundSpot; readonly place: number }) {
  const { layout, report } = useOpen();
  const { by } = useBoxSearch();
  const letter = SPOT_LETTERS[place] ?? '';
  const isThere = isBoxAt(layout, spot);
  return (
    <li className="line spot-line">
      <span className="spot-letter" aria-hidden="true">
        {letter}
      </span>
      <span className="line-text">
        <span className="line-name">
          <span className="spoken">{letter}: </span>
          {spotPlaceWords(spot, layout)}
        </span>
        <span className="line-note">
          {capitalised(spotNeedWords(spot, layout))}
          {!isThere && ` · ${spotGainWords(spot, report, { by, units: layout.units })}`}
        </span>
      </span>
      {isThere ? (
        <strong>Here</strong>
      ) : (
        <button
          type="button"
          className="primary"
          onClick={() => edit('Move the box', (from) => moveBox(from, spot.box))}
        >
          Take<span className="spoken"> spot {letter}</span>
        </button>
      )}
    </li>
  );
}
