import { LEFT_OUT_OF_SOUND } from '../../report/sound.ts';
import { useOpen } from '../parts/useOpen.ts';
import { CAUTIONS } from '../words/cautionWords.ts';
import { ClosePart } from './close/ClosePart.tsx';
import { FiguresPart } from './FiguresPart.tsx';
import { HighPassPart } from './HighPassPart.tsx';
import { KickPart } from './KickPart.tsx';
import { OverheadsPart } from './overheads/OverheadsPart.tsx';
import { PairsPart } from './PairsPart.tsx';
import { PrintButton } from './print/PrintButton.tsx';
import { type PrintedPart, soundTables } from './print/soundTables.ts';
import { TimingPart } from './timing/TimingPart.tsx';
import { useSound } from './useSound.ts';
import { estimateWords } from './words/estimateWords.ts';

const PARTS: readonly PrintedPart[] = ['close', 'overheads', 'timing', 'pairs', 'highPass'];

/** What the mics hear: one part open at a time, each with its main figure in its line. */
export function SoundScreen() {
  const { layout } = useOpen();
  const sound = useSound();
  const hearing = CAUTIONS.find(({ what }) => what === 'Hearing');
  return (
    <>
      <h2 className="spoken">Sound</h2>
      <div className="sound-notes">
        {hearing && (
          <p>
            <strong>{hearing.what}.</strong> {hearing.text}
          </p>
        )}
        <p className="soft">{estimateWords(LEFT_OUT_OF_SOUND)}</p>
      </div>
      {layout.mics.length === 0 && (
        <p className="empty">
          No mics yet. Add some in Mics, and this section says what they hear.
        </p>
      )}
      <ClosePart sound={sound} />
      <KickPart sound={sound} />
      <OverheadsPart sound={sound} />
      <TimingPart sound={sound} />
      <PairsPart sound={sound} />
      <HighPassPart sound={sound} />
      <FiguresPart />
      {layout.mics.length > 0 && (
        <div className="sound-out">
          <PrintButton
            sound={sound}
            what="all of it"
            tables={() => PARTS.flatMap((part) => soundTables(part, layout, sound))}
          />
        </div>
      )}
    </>
  );
}
