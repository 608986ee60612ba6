import { aimMic } from '../../../layout/edit/mics.ts';
import type { CloseRow, Sound, SoundChange } from '../../../report/sound.ts';
import { edit } from '../../../session/session.ts';
import { showLength } from '../../../units/lengthText.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { patternWords } from '../../words/kindWords.ts';
import { nameOf } from '../../words/nameOf.ts';
import { Facts } from '../Facts.tsx';
import { FigureTable } from '../NumbersTable.tsx';
import { useSoundChoices } from '../useSound.ts';
import { changeWords, levelWords } from '../words/amounts.ts';
import {
  aimWords,
  isolationFigure,
  moveWords,
  shellWords,
  sinceWords,
  spillWords,
  turnGainWords,
  turnWords,
} from '../words/closeWords.ts';
import { PolarPlot } from './PolarPlot.tsx';

interface CloseMicCardProps {
  readonly row: CloseRow;
  readonly sound: Sound;
  readonly change: SoundChange | undefined;
}

/** What one close mic hears, and what could be done about it. */
export function CloseMicCard({ row, sound, change }: CloseMicCardProps) {
  const { layout } = useOpen();
  const { units } = layout;
  const { shellLoss } = useSoundChoices();
  const hearing = sound.hearing.find(({ mic }) => mic === row.mic);
  return (
    <div className="sound-card">
      <p aria-live="polite" className="sound-change">
        {change
          ? sinceWords(change, units)
          : 'Not moved yet: move it, and the change is said here.'}
      </p>
      <Facts
        facts={[
          ['Own level', levelWords(row.level)],
          ['Isolation', isolationFigure(row)],
          ['Bass boost, 100 Hz', changeWords(row.proximity)],
        ]}
      />
      {row.shell !== null && (
        <p className="soft small">{shellWords(row.shell, shellLoss, layout)}</p>
      )}
      <p>
        <strong>Aim:</strong> {aimWords(row, units)}
      </p>
      <p>
        <strong>Spills most:</strong> {spillWords(row, layout)}.
      </p>
      <p className="soft small">
        Boost for {hearing ? patternWords(hearing.pattern.a).toLowerCase() : 'its pattern'} at{' '}
        {showLength(row.distance, units)}.
      </p>
      {hearing && <PolarPlot row={row} hearing={hearing} />}
      {row.shell === null && <NullTurnOffer row={row} />}
      <Trials row={row} />
    </div>
  );
}

function NullTurnOffer({ row }: { readonly row: CloseRow }) {
  const { layout } = useOpen();
  const { turn, mic } = row;
  if (!turn) {
    return (
      <p className="soft small">
        No turn of up to 15° gains half a dB against the worst neighbour.
      </p>
    );
  }
  const { azimuth, pitch } = turn;
  const apply = () =>
    edit(`Turn ${nameOf(layout, mic)} to its null`, (now) =>
      aimMic(now, mic, azimuth === null ? { pitch } : { azimuth, pitch }),
    );
  return (
    <div className="sound-offer">
      <button type="button" className="primary" onClick={apply}>
        {turnWords(turn, layout)}
      </button>
      <p className="soft small">{turnGainWords(turn, row, layout)} Can be undone.</p>
    </div>
  );
}

function Trials({ row }: { readonly row: CloseRow }) {
  return (
    <div className="sound-table">
      <FigureTable
        caption="What small moves would change"
        head={['If it were', 'Level', 'Isolation', 'Boost']}
        rows={row.trials.map((trial) => [
          moveWords(trial.move),
          changeWords(trial.level),
          changeWords(trial.isolation),
          changeWords(trial.proximity),
        ])}
      />
    </div>
  );
}
