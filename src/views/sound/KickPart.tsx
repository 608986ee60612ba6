import type { KickRow, Sound } from '../../report/sound.ts';
import { useOpen } from '../parts/useOpen.ts';
import { counted, nameOf } from '../words/nameOf.ts';
import { ShakerAdvice } from './ShakerAdvice.tsx';
import { SoundPartFrame } from './SoundPartFrame.tsx';
import { TimingDetails } from './timing/TimingDetails.tsx';
import { batterWords, kickPlaceWords } from './words/kickWords.ts';
import { rowTitle } from './words/timingWords.ts';

/** Where the kick's mics are, how they meet, and how a seat shaker is fed. */
export function KickPart({ sound }: { readonly sound: Sound }) {
  const mics = sound.kicks.reduce((sum, kick) => sum + kick.mics.length, 0);
  if (sound.kicks.length === 0) return null;
  return (
    <SoundPartFrame part="kick" title="Kick" summary={counted(mics, 'mic')}>
      {() => (
        <>
          {sound.kicks.map((kick) => (
            <OneKick key={kick.kick} kick={kick} />
          ))}
          <ShakerAdvice mics={sound.kicks.flatMap((kick) => kick.mics.map(({ mic }) => mic))} />
        </>
      )}
    </SoundPartFrame>
  );
}

function OneKick({ kick }: { readonly kick: KickRow }) {
  const { layout } = useOpen();
  return (
    <div className="sound-block">
      <h4>{nameOf(layout, kick.kick)}</h4>
      {kick.mics.length === 0 && <p className="soft">No mic is there for it.</p>}
      {kick.mics.map((mic) => (
        <p key={mic.mic}>
          <strong>{nameOf(layout, mic.mic)}:</strong>{' '}
          {kickPlaceWords(mic, kick.hasPort, layout.units)}. {batterWords(mic, layout.units)}
        </p>
      ))}
      {kick.pairs.map((row) => (
        <div key={`${row.first}/${row.second}`} className="sound-block">
          <h5>{rowTitle(row, layout)}</h5>
          <TimingDetails row={row} />
        </div>
      ))}
    </div>
  );
}
