import type { Id } from '../../layout/fields.ts';
import { ledFrom, needsSpot } from '../../report/needsSpot.ts';
import type { LeftMic } from '../../session/clearing.ts';
import { useClearSpots } from '../parts/useClearSpots.ts';
import { useOpen } from '../parts/useOpen.ts';
import { enoughWords, searchingWords, whatToTry, whyNotWords } from '../words/clearSpotWords.ts';
import { nameOf, unbroken } from '../words/nameOf.ts';
import { MicOffer } from './MicOffer.tsx';
import { SearchWorking } from './SearchWorking.tsx';
import { useSearch } from './useSearch.ts';

/** For a mic that is in the way: the smallest change that clears it, looked for, shown, taken or left. Nothing for a clear one. */
export function ClearSpot({ mic }: { readonly mic: Id }) {
  const { layout, report } = useOpen();
  const spots = useClearSpots();
  const search = useSearch(mic);
  const name = nameOf(layout, mic);
  switch (search?.kind) {
    case 'working':
      return (
        <SearchWorking
          text={searchingWords(name, search.beyond, layout)}
          done={search.spent}
          of={1}
        />
      );
    case 'offered':
      return <MicOffer mic={mic} offer={search} />;
    case 'none':
      return <NoneWithinReach left={search.left[0] ?? { mic, why: 'none-within-reach' }} />;
    case 'failed':
      return <p role="alert">The search failed: {search.reason}</p>;
    default: {
      const row = report.clearances.find((each) => each.mic === mic);
      if (!row || !needsSpot(row, report)) return null;
      const find = () => spots.find({ mics: [mic], whole: false, label: `Clear spot of ${name}` });
      return (
        <div className="buttons">
          <button type="button" className="primary" onClick={find}>
            Find a clear spot
          </button>
        </div>
      );
    }
  }
}

function NoneWithinReach({ left }: { readonly left: LeftMic }) {
  const { layout, report } = useOpen();
  const { mic: id } = left;
  const mic = layout.mics.find((each) => each.id === id);
  const [title, reason] = whyNotWords[left.why];
  const row = report.clearances.find((each) => each.mic === id);
  return (
    <section className="offer" aria-label={`Clear spot of ${nameOf(layout, id)}`}>
      <p role="status">
        <strong>{title}.</strong> {reason} {unbroken(enoughWords(left, row, { layout, report }))}
      </p>
      <p>What to try:</p>
      <ul className="plain-list">
        {mic &&
          whatToTry(layout, mic, row && ledFrom(row, report)).map((way) => (
            <li key={way}>{way}</li>
          ))}
      </ul>
    </section>
  );
}
