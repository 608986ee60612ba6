import type { Sound } from '../../report/sound.ts';
import { useOpen } from '../parts/useOpen.ts';
import { nameOf } from '../words/nameOf.ts';
import { SoundPartFrame } from './SoundPartFrame.tsx';
import { StyleField } from './StyleField.tsx';
import { useSoundChoices } from './useSound.ts';
import { styleWords } from './words/estimateWords.ts';
import { rangeWords, reasonWords } from './words/pairWords.ts';

/** Where to start with each mic's high-pass, by the style of music. */
export function HighPassPart({ sound }: { readonly sound: Sound }) {
  const { layout } = useOpen();
  const { style } = useSoundChoices();
  return (
    <SoundPartFrame
      part="highPass"
      title="High-pass"
      summary={`Where to start for ${styleWords(style).toLowerCase()}`}
    >
      {() => (
        <>
          <StyleField />
          <p className="soft small">Starting points by common practice. Then listen.</p>
          <ul className="lines">
            {sound.highPasses.map((row) => (
              <li key={row.mic} className="line sound-line">
                <span className="line-text">
                  <span className="line-name">{nameOf(layout, row.mic)}</span>
                  <span className="line-note">{reasonWords(row)}</span>
                </span>
                <span className="line-number">{rangeWords(row)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </SoundPartFrame>
  );
}
