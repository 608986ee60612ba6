import { USUAL_SOUND } from '../../report/sound.ts';
import { DECIBELS } from '../fields/measure.ts';
import { SettingField } from './SettingField.tsx';
import { preferSound, useSoundChoices } from './useSound.ts';
import { levelWords } from './words/amounts.ts';

/** What sound from outside loses on its way into a drum. */
export function ShellField() {
  const { shellLoss } = useSoundChoices();
  return (
    <div>
      <SettingField
        label="Kept out by a shell"
        value={shellLoss}
        measure={DECIBELS}
        limits={{ low: 0, high: 40 }}
        onSet={(to) => preferSound({ shellLoss: to === USUAL_SOUND.shellLoss ? null : to })}
      />
      <p className="field-hint">
        For mics inside a drum; {levelWords(USUAL_SOUND.shellLoss)} is what thin heads with a port
        keep out around 2 kHz, less of the bass.
      </p>
    </div>
  );
}
