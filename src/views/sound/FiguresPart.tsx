import { type SoundingKind, USUAL_SOUND } from '../../report/sound.ts';
import { session } from '../../session/session.ts';
import { drumKey } from '../../session/soundPreferences.ts';
import { DECIBELS, HERTZ } from '../fields/measure.ts';
import { useOpen } from '../parts/useOpen.ts';
import { kindWords } from '../words/kindWords.ts';
import { nameOf } from '../words/nameOf.ts';
import { SettingField } from './SettingField.tsx';
import { ShellField } from './ShellField.tsx';
import { SoundPartFrame } from './SoundPartFrame.tsx';
import { preferSound, useSound, useSoundChoices } from './useSound.ts';
import { WashField } from './WashField.tsx';

/** What no drawing tells, for the user to change. */
export function FiguresPart() {
  return (
    <SoundPartFrame
      part="figures"
      title="Levels and pitches"
      summary="What it is computed with, yours to change"
    >
      {() => (
        <>
          <p className="soft small">
            Estimates, kept on this device and not in the layout. They hold until you change them.
          </p>
          <div className="field-grid">
            <WashField />
            <ShellField />
          </div>
          <Levels />
          <Fundamentals />
          <button
            type="button"
            onClick={() =>
              preferSound({ stageWash: null, shellLoss: null, levels: {}, fundamentals: {} })
            }
          >
            Back to the usual figures
          </button>
        </>
      )}
    </SoundPartFrame>
  );
}

const kinds = Object.keys(USUAL_SOUND.levels) as SoundingKind[];

function Levels() {
  const { layout } = useOpen();
  const { levels } = useSoundChoices();
  const set = (kind: SoundingKind, level: number) =>
    preferSound({ levels: { ...session.getState().preferences.sound.levels, [kind]: level } });
  return (
    <div className="sound-block">
      <h4>Level of a loud stroke at 1 m</h4>
      <div className="field-grid">
        {kinds
          .filter((kind) => layout.pieces.some((piece) => piece.kind === kind))
          .map((kind) => (
            <SettingField
              key={kind}
              label={kindWords(kind)}
              value={levels[kind]}
              measure={DECIBELS}
              limits={{ low: 60, high: 130 }}
              onSet={(level) => set(kind, level)}
            />
          ))}
      </div>
    </div>
  );
}

function Fundamentals() {
  const { layout } = useOpen();
  const drums = useSound().fundamentals;
  const set = (id: string, hertz: number) =>
    preferSound({
      fundamentals: {
        ...session.getState().preferences.sound.fundamentals,
        [drumKey(layout.id, id)]: hertz,
      },
    });
  if (drums.length === 0) return null;
  return (
    <div className="sound-block">
      <h4>Fundamentals</h4>
      <p className="soft small">
        Estimated by size; tunings differ by half an octave and more. Tap the drum, read a tuner.
      </p>
      <div className="field-grid">
        {drums.map(({ piece, hertz }) => (
          <SettingField
            key={piece}
            label={nameOf(layout, piece)}
            value={hertz}
            measure={HERTZ}
            limits={{ low: 20, high: 1000 }}
            onSet={(to) => set(piece, to)}
          />
        ))}
      </div>
    </div>
  );
}
