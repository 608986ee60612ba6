import type { Venue } from '../../../layout/venue.ts';
import type { Step } from '../../../session/history.ts';

type AirOfVenue = Pick<Venue, 'temperature' | 'humidity'>;

/** The air before the last change of the venue's that can be undone; the venue's own where there was none. */
export function lastAirIn(past: readonly Step[], now: AirOfVenue): AirOfVenue {
  const before = past.findLast(
    ({ layout: { venue } }) =>
      venue.temperature !== now.temperature || venue.humidity !== now.humidity,
  );
  const { temperature, humidity } = before?.layout.venue ?? now;
  return { temperature, humidity };
}
