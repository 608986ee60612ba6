import { USUAL_SOUND } from '../../report/sound.ts';
import { DECIBELS } from '../fields/measure.ts';
import { SettingField } from './SettingField.tsx';
import { preferSound, useSoundChoices } from './useSound.ts';
import { levelWords } from './words/amounts.ts';

/** The level of everybody else on the stage, where the kit stands. */
export function WashField() {
  const { stageWash } = useSoundChoices();
  return (
    <div>
      <SettingField
        label="Stage wash at the kit"
        value={stageWash}
        measure={DECIBELS}
        limits={{ low: 40, high: 130 }}
        onSet={(to) => preferSound({ stageWash: to === USUAL_SOUND.stageWash ? null : to })}
      />
      <p className="field-hint">
        Your figure; {levelWords(USUAL_SOUND.stageWash)} is an estimate for a loud band.
      </p>
    </div>
  );
}
