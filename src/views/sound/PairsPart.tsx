import type { Sound } from '../../report/sound.ts';
import { useOpen } from '../parts/useOpen.ts';
import { SoundPartFrame } from './SoundPartFrame.tsx';
import { harmWords, pairsSummary, pairTitle, pairWords, RULE_WORDS } from './words/pairWords.ts';

/** Every two open mics by the ripple that their worse source makes. */
export function PairsPart({ sound }: { readonly sound: Sound }) {
  const { layout } = useOpen();
  const { pairs } = sound;
  return (
    <SoundPartFrame part="pairs" title="3:1 pairs" summary={pairsSummary(pairs, layout)}>
      {() => (
        <>
          <p className="soft small">{RULE_WORDS} Most harmful first, peak to dip.</p>
          <ol className="lines">
            {pairs.map((row) => (
              <li key={`${row.mic}/${row.other}`} className="line sound-line">
                <span className="line-text">
                  <span className="line-name">{pairTitle(row, layout)}</span>
                  {pairWords(row, layout, layout.units).map((line) => (
                    <span key={line} className="line-note">
                      {line}
                    </span>
                  ))}
                </span>
                <span className="line-number">{harmWords(row)}</span>
              </li>
            ))}
          </ol>
        </>
      )}
    </SoundPartFrame>
  );
}
