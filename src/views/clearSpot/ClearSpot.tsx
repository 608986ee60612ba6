import type { Id } from '../../layout/fields.ts';
import type { LeftMic } from '../../session/clearing.ts';
import { useClearSpots } from '../parts/useClearSpots.ts';
import { useOpen } from '../parts/useOpen.ts';
import { searchingWords, whatToTry, whyNotWords } from '../words/clearSpotWords.ts';
import { nameOf } from '../words/nameOf.ts';
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
      return <NoneWithinReach mic={mic} why={search.left[0]?.why ?? 'none-within-reach'} />;
    case 'failed':
      return <p role="alert">The search failed: {search.reason}</p>;
    default: {
      const row = report.clearances.find((each) => each.mic === mic);
      if (!row || row.verdict === 'clear') return null;
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

interface NoneWithinReachProps {
  readonly mic: Id;
  readonly why: LeftMic['why'];
}

function NoneWithinReach({ mic: id, why }: NoneWithinReachProps) {
  const { layout } = useOpen();
  const mic = layout.mics.find((each) => each.id === id);
  const [title, reason] = whyNotWords[why];
  return (
    <section className="offer" aria-label={`Clear spot of ${nameOf(layout, id)}`}>
      <p role="status">
        <strong>{title}.</strong> {reason}
      </p>
      <p>What to try:</p>
      <ul className="plain-list">
        {mic && whatToTry(layout, mic).map((way) => <li key={way}>{way}</li>)}
      </ul>
    </section>
  );
}
