import { setVenue } from '../../layout/edit/stage.ts';
import { venueSchema } from '../../layout/venue.ts';
import { edit } from '../../session/session.ts';
import { DateField } from '../fields/DateField.tsx';
import { CELSIUS, PERCENT } from '../fields/measure.ts';
import { NotesField } from '../fields/NotesField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { TextField } from '../fields/TextField.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** Where and when, and the air that sets the speed of sound. */
export function VenueFields() {
  const { venue } = useOpen().layout;
  return (
    <Group title="Venue">
      <div className="wide">
        <TextField
          label="Name"
          value={venue.name}
          most={80}
          mayBeEmpty
          onSet={(name) => edit('Venue name', (layout) => setVenue(layout, { name }))}
        />
      </div>
      <DateField
        label="Date"
        value={venue.date}
        onSet={(date) => edit('Date', (layout) => setVenue(layout, { date }))}
      />
      <span />
      <NumberField
        label="Temperature"
        step="Temperature"
        value={venue.temperature}
        measure={CELSIUS}
        limits={limitsOf(venueSchema.shape.temperature)}
        apply={(layout, temperature) => setVenue(layout, { temperature })}
      />
      <NumberField
        label="Humidity"
        step="Humidity"
        value={venue.humidity}
        measure={PERCENT}
        limits={limitsOf(venueSchema.shape.humidity)}
        apply={(layout, humidity) => setVenue(layout, { humidity })}
      />
      <div className="wide">
        <NotesField
          label="Notes"
          value={venue.notes}
          most={4000}
          onSet={(notes) => edit('Notes', (layout) => setVenue(layout, { notes }))}
        />
      </div>
    </Group>
  );
}
