import { describe, expect, it } from 'vitest';
import { setVenue } from '../../../../src/layout/edit/stage.ts';
import { lastAirIn, lastAirOf } from '../../../../src/views/sound/timing/lastAir.ts';
import { kit } from '../sampleSound.ts';

const step = (temperature: number, humidity: number) => ({
  label: 'Temperature',
  layout: setVenue(kit, { temperature, humidity }),
});

describe('the last venue’s air', () => {
  it('is that before the last change of air', () => {
    const past = [step(5, 80), step(12, 60), step(24, 40)];
    expect(lastAirIn(past, { temperature: 24, humidity: 40 })).toEqual({
      temperature: 12,
      humidity: 60,
    });
  });

  it('is this venue’s own where it never changed', () => {
    const now = { temperature: 20, humidity: 50 };
    expect(lastAirIn([step(20, 50)], now)).toEqual(now);
    expect(lastAirIn([], now)).toEqual(now);
  });
});

describe('the air to compare with', () => {
  const venue = { ...kit.venue, temperature: 20, humidity: 50 };
  const typed = { temperature: 8, humidity: 70 };
  const origin = {
    layout: 'last',
    revision: 3,
    name: 'Summer tour',
    ...{ deck: kit.deck, box: kit.box, cabling: kit.cabling },
    venue: { ...venue, name: 'Quay stage', temperature: 31, humidity: 65 },
  };

  it('is the origin’s, by its venue’s name, whatever was typed', () => {
    expect(lastAirOf({ origin, venue }, typed, [step(5, 80)])).toEqual({
      from: 'origin',
      name: 'Quay stage',
      air: { temperature: 31, humidity: 65 },
    });
    const unnamed = { ...origin, venue: { ...origin.venue, name: '' } };
    expect(lastAirOf({ origin: unnamed, venue }, null, [])).toMatchObject({ name: 'Summer tour' });
  });

  it('is what was typed, else what was before, without an origin', () => {
    expect(lastAirOf({ origin: null, venue }, typed, [])).toEqual({ from: 'typed', air: typed });
    expect(lastAirOf({ origin: null, venue }, null, [step(5, 80)])).toEqual({
      from: 'typed',
      air: { temperature: 5, humidity: 80 },
    });
  });
});
