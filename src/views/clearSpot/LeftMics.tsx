import type { LeftMic } from '../../session/clearing.ts';
import { useOpen } from '../parts/useOpen.ts';
import { enoughWords, nextForLeft, roomWords, whyNotWords } from '../words/clearSpotWords.ts';
import { nameOf, unbroken } from '../words/nameOf.ts';

/** The mics that a search leaves in the way: how each stands, why it stays, what room would be enough, and the next step. */
export function LeftMics({ left }: { readonly left: readonly LeftMic[] }) {
  const open = useOpen();
  const { layout, report } = open;
  return (
    <ul className="plain-list" aria-label="Not cleared">
      {left.map((each) => {
        const mic = layout.mics.find(({ id }) => id === each.mic);
        const row = report.clearances.find((one) => one.mic === each.mic);
        const stands = row && roomWords(row, open);
        return (
          <li key={each.mic}>
            <strong>{nameOf(layout, each.mic)}</strong>{' '}
            {stands && <span className="unbroken">{stands}: </span>}
            {whyNotWords[each.why][0].toLowerCase()}. {unbroken(enoughWords(each, row, open))}{' '}
            {mic && <span className="soft">{nextForLeft(each, mic)}</span>}
          </li>
        );
      })}
    </ul>
  );
}
