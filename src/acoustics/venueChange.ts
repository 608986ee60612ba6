import type { Mm, Ms } from '../units/quantity.ts';
import { type Air, type AirState, airOf } from './air.ts';
import { delayOf } from './comb.ts';
import type { MetresPerSecond } from './quantities.ts';
import type { TimingRow } from './timing.ts';

/** The time for one distance in two airs. */
export interface DelayChange {
  readonly before: Ms;
  readonly after: Ms;
  /** After less before. */
  readonly change: Ms;
  readonly samples48: number;
  readonly samples96: number;
}

/** A timed pair in two airs: by temperature alone (H1), and with humidity (H2). */
export interface TimingChange {
  readonly row: TimingRow;
  readonly byTemperature: DelayChange;
  readonly withHumidity: DelayChange;
}

/** What the air of another venue changes for the same placing. */
export interface VenueChange {
  readonly from: Air;
  readonly to: Air;
  readonly rows: readonly TimingChange[];
}

/** The time for a distance in two airs, each given by its speed of sound. */
export function delayChange(distance: Mm, from: MetresPerSecond, to: MetresPerSecond): DelayChange {
  const before = delayOf(distance, from);
  const after = delayOf(distance, to);
  return {
    before: before.ms,
    after: after.ms,
    change: after.ms - before.ms,
    samples48: after.samples48 - before.samples48,
    samples96: after.samples96 - before.samples96,
  };
}

/** What changes for timed pairs between the last venue's air and this one's, in the rows' order. */
export function venueChange(
  rows: readonly TimingRow[],
  last: AirState,
  now: AirState,
): VenueChange {
  const [from, to] = [airOf(last), airOf(now)];
  return {
    from,
    to,
    rows: rows.map((row) => ({
      row,
      byTemperature: delayChange(row.pathDifference, from.speed, to.speed),
      withHumidity: delayChange(row.pathDifference, from.humidSpeed, to.humidSpeed),
    })),
  };
}
