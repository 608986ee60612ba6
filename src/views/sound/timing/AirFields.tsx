import { venueSchema } from '../../../layout/venue.ts';
import { type AirChange, airChange, type Sound } from '../../../report/sound.ts';
import { useSession } from '../../../session/session.ts';
import { CELSIUS, PERCENT } from '../../fields/measure.ts';
import { limitsOf } from '../../fields/reading.ts';
import { useOpen } from '../../parts/useOpen.ts';
import { NumbersTable } from '../NumbersTable.tsx';
import { SettingField } from '../SettingField.tsx';
import { preferSound } from '../useSound.ts';
import { figure, signedFigure } from '../words/amounts.ts';
import { airChangeWords, airWords, originAirWords, rowTitle } from '../words/timingWords.ts';
import { type LastAir, lastAirOf } from './lastAir.ts';

/** The venue's air, and what it changes against the last venue's. */
export function AirFields({ sound }: { readonly sound: Sound }) {
  const { layout } = useOpen();
  const typed = useSession((state) => state.preferences.sound.lastAir);
  const past = useSession((state) => state.history.past);
  const last = lastAirOf(layout, typed, past);
  const change = airChange(sound, last.air, layout.venue);
  return (
    <div className="sound-block">
      <h4>Air</h4>
      <p>{airWords(sound)} Set it under Stage.</p>
      {last.from === 'origin' ? (
        <p>{originAirWords(last.name, last.air)}</p>
      ) : (
        <TypedAir air={last.air} />
      )}
      <p aria-live="polite">{airChangeWords(change)}</p>
      <ChangedDelays change={change} />
    </div>
  );
}

/** For a layout that was not started from another: the earlier air by hand. */
function TypedAir({ air }: Pick<LastAir, 'air'>) {
  const { temperature, humidity } = useOpen().layout.venue;
  return (
    <>
      <div className="field-grid">
        <SettingField
          label="Last venue, temperature"
          value={air.temperature}
          measure={CELSIUS}
          limits={limitsOf(venueSchema.shape.temperature)}
          onSet={(to) => preferSound({ lastAir: { ...air, temperature: to } })}
        />
        <SettingField
          label="Last venue, humidity"
          value={air.humidity}
          measure={PERCENT}
          limits={limitsOf(venueSchema.shape.humidity)}
          onSet={(to) => preferSound({ lastAir: { ...air, humidity: to } })}
        />
      </div>
      <button type="button" onClick={() => preferSound({ lastAir: { temperature, humidity } })}>
        Keep this venue’s air to compare the next with
      </button>
    </>
  );
}

function ChangedDelays({ change }: { readonly change: AirChange }) {
  const { layout } = useOpen();
  const { from, to, rows } = change;
  if (from.speed === to.speed && from.humidSpeed === to.humidSpeed) return null;
  return (
    <NumbersTable
      caption="the delays then and now"
      head={['Pair', 'Then, ms', 'Now, ms', 'Samples, 48 kHz']}
      rows={rows.map(({ row, byTemperature }) => [
        rowTitle(row, layout),
        figure(Math.abs(byTemperature.before), 2),
        figure(Math.abs(byTemperature.after), 2),
        signedFigure(Math.abs(byTemperature.after) * 48 - Math.abs(byTemperature.before) * 48, 1),
      ])}
    />
  );
}
