import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airOf, humidSpeedOfSound, speedOfSound } from '../../src/acoustics/air.ts';
import { agrees, references } from './reference.ts';

describe('H1 speed of sound by temperature', () => {
  it.each(references('sos.iso9613.'))('$id, $source', (reference) => {
    const temperature = Number.parseFloat(reference.id.slice('sos.iso9613.'.length));
    expect(agrees(speedOfSound(temperature), reference)).toBe(true);
  });

  it('stays within 0.35 m/s of the field approximation 331.3 + 0.606 t from 0 to 25 degrees C', () => {
    for (let t = 0; t <= 25; t += 1) {
      expect(Math.abs(speedOfSound(t) - (331.3 + 0.606 * t))).toBeLessThan(0.35);
    }
  });
});

describe('H2 speed of sound with humidity', () => {
  it.each(references('sos.cramer_fig1.'))('$id, $source', (reference) => {
    const match = /\.(\d+)C\.rh([\d.]+)$/.exec(reference.id);
    const [temperature, humidity] = [Number(match?.[1]), 100 * Number(match?.[2])];
    expect(agrees(humidSpeedOfSound({ temperature, humidity }), reference)).toBe(true);
  });

  it('rises with humidity, by 0.365 % from dry to saturated air at 20 degrees C (computed from the equation)', () => {
    const [dry, wet] = [0, 100].map((humidity) => humidSpeedOfSound({ temperature: 20, humidity }));
    expect((wet ?? 0) / (dry ?? 1) - 1).toBeCloseTo(0.00365, 5);
  });

  it('is within 0.75 % of H1 wherever it is stated to hold', () => {
    const state = fc.record({
      temperature: fc.double({ min: 0, max: 30, noNaN: true }),
      humidity: fc.double({ min: 0, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(state, (air) => {
        const ratio = humidSpeedOfSound(air) / speedOfSound(air.temperature);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.0075);
      }),
    );
  });
});

describe('airOf', () => {
  it('says where the humid speed is stated to hold', () => {
    const valid = [-1, 0, 30, 31].map(
      (temperature) => airOf({ temperature, humidity: 50 }).humidSpeedIsValid,
    );
    expect(valid).toEqual([false, true, true, false]);
  });

  it('names a loss that is negligible across a kit: 0.32 dB at 20 degrees C and 50 %', () => {
    expect(airOf({ temperature: 20, humidity: 50 }).lossLeftOut).toBeCloseTo(0.316, 2);
  });
});
