import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { humidSpeedOfSound, speedOfSound } from '../../src/acoustics/air.ts';
import { delayChange, venueChange } from '../../src/acoustics/venueChange.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece } from '../rig/kits.ts';

describe('what another venue changes', () => {
  it('planned at 20, played at 30 degrees C, 2 m: 5.8275 to 5.7306 ms, 4.65 samples (computed)', () => {
    const change = delayChange(2000, speedOfSound(20), speedOfSound(30));
    expect(change.before).toBeCloseTo(5.8275, 4);
    expect(change.after).toBeCloseTo(5.7306, 4);
    expect(change.samples48).toBeCloseTo(-4.65, 2);
    expect(change.samples96).toBeCloseTo(2 * change.samples48, 9);
  });

  it('from dry to saturated air at 20 degrees C over 3 m: 0.032 ms, 1.5 samples (computed)', () => {
    const [dry = 0, wet = 0] = [0, 100].map((humidity) =>
      humidSpeedOfSound({ temperature: 20, humidity }),
    );
    const change = delayChange(3000, dry, wet);
    expect(change.change).toBeCloseTo(-0.032, 3);
    expect(change.samples48).toBeCloseTo(-1.5, 1);
  });

  it('is told for every timed pair; the later one is what the later layout computes', () => {
    const later = { ...fivePiece, venue: { ...fivePiece.venue, temperature: 31, humidity: 80 } };
    const rig = buildRig(fivePiece);
    const [before, after] = [fivePiece, later].map(
      (layout) => createAcoustics()(layout, rig).timing.rows,
    );
    const change = venueChange(before ?? [], fivePiece.venue, later.venue);
    expect(change.rows.map(({ row }) => row)).toEqual(before);
    for (const [i, { byTemperature, withHumidity }] of change.rows.entries()) {
      expect(byTemperature.before).toBeCloseTo(before?.[i]?.delay.ms ?? Number.NaN, 12);
      expect(byTemperature.after).toBeCloseTo(after?.[i]?.delay.ms ?? Number.NaN, 12);
      expect(Math.abs(withHumidity.change)).toBeGreaterThanOrEqual(Math.abs(byTemperature.change));
    }
  });

  it('nothing changes in the same air', () => {
    const { rows } = createAcoustics()(fivePiece, buildRig(fivePiece)).timing;
    for (const { byTemperature, withHumidity } of venueChange(
      rows,
      fivePiece.venue,
      fivePiece.venue,
    ).rows) {
      expect([byTemperature.change, withHumidity.change]).toEqual([0, 0]);
    }
  });
});
