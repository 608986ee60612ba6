import { venueSchema } from '../../../layout/venue.ts';
import { airChange, type Sound } from '../../../report/sound.ts';
import { useSession } from '../../../session/session.ts';
import { CELSIUS, PERCENT } from '../../fields/measure.ts';
import { limitsOf } from '../../fields/reading.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { SettingField } from '../SettingField.tsx';
import { preferSound } from '../useSound.ts';
import { airChangeWords, airWords } from '../words/timingWords.ts';
import { lastAirIn } from './lastAir.ts';

/** The venue's air, and what it changes against the last venue's. */
export function AirFields({ sound }: { readonly sound: Sound }) {
  const { venue } = useOpen().layout;
  const said = useSession((state) => state.preferences.sound.lastAir);
  const past = useSession((state) => state.history.past);
  const last = said ?? lastAirIn(past, venue);
  const { temperature, humidity } = venue;
  return (
    <div className="sound-block">
      <h4>Air</h4>
      <p>{airWords(sound)} Set it under Stage.</p>
      <div className="field-grid">
        <SettingField
          label="Last venue, temperature"
          value={last.temperature}
          measure={CELSIUS}
          limits={limitsOf(venueSchema.shape.temperature)}
          onSet={(to) => preferSound({ lastAir: { ...last, temperature: to } })}
        />
        <SettingField
          label="Last venue, humidity"
          value={last.humidity}
          measure={PERCENT}
          limits={limitsOf(venueSchema.shape.humidity)}
          onSet={(to) => preferSound({ lastAir: { ...last, humidity: to } })}
        />
      </div>
      <p aria-live="polite">{airChangeWords(airChange(sound, last, venue))}</p>
      <button type="button" onClick={() => preferSound({ lastAir: { temperature, humidity } })}>
        Keep this venue’s air to compare the next with
      </button>
    </div>
  );
}
