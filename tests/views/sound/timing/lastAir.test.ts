import { describe, expect, it } from 'vitest';
import { setVenue } from '../../../../src/layout/edit/stage.ts';
import { lastAirIn } from '../../../../src/views/sound/timing/lastAir.ts';
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
