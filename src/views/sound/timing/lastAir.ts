import type { Layout } from '../../../layout/layout.ts';
import type { Venue } from '../../../layout/venue.ts';
import type { Step } from '../../../session/history.ts';
import type { SoundPreferences } from '../../../session/soundPreferences.ts';

type AirOfVenue = Pick<Venue, 'temperature' | 'humidity'>;

/** The air of the venue before, and how it is known: by the layout this one was started from, or by what a person typed. */
export type LastAir =
  | { readonly from: 'origin'; readonly name: string; readonly air: AirOfVenue }
  | { readonly from: 'typed'; readonly air: AirOfVenue };

/**
 * The air to compare with: the origin's; without one what was typed, else that before the last change of the venue's air that
 * can be undone.
 */
export function lastAirOf(
  { origin, venue }: Pick<Layout, 'origin' | 'venue'>,
  typed: SoundPreferences['lastAir'],
  past: readonly Step[],
): LastAir {
  if (!origin) return { from: 'typed', air: typed ?? lastAirIn(past, venue) };
  const { temperature, humidity } = origin.venue;
  const name = origin.venue.name === '' ? origin.name : origin.venue.name;
  return { from: 'origin', name, air: { temperature, humidity } };
}

/** The air before the last change of the venue's that can be undone; the venue's own where there was none. */
export function lastAirIn(past: readonly Step[], now: AirOfVenue): AirOfVenue {
  const before = past.findLast(
    ({ layout: { venue } }) =>
      venue.temperature !== now.temperature || venue.humidity !== now.humidity,
  );
  const { temperature, humidity } = before?.layout.venue ?? now;
  return { temperature, humidity };
}
