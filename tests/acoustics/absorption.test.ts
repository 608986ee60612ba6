import { describe, expect, it } from 'vitest';
import { absorption } from '../../src/acoustics/absorption.ts';
import { agrees, references } from './reference.ts';

/** The nearest exact octave or third-octave midband, at which the tables are evaluated. */
const midband = (nominal: number): number =>
  1000 * 10 ** (Math.round(10 * Math.log10(nominal / 1000)) / 10);

function computed(id: string): number {
  const match = /T(\d+)\.RH(\d+)\.f(\d+)$/.exec(id);
  const [temperature, humidity, frequency] = [1, 2, 3].map((i) => Number(match?.[i]));
  if (temperature === undefined || humidity === undefined || frequency === undefined) {
    throw new RangeError(id);
  }
  return 1000 * absorption({ temperature, humidity }, midband(frequency));
}

describe('H3 absorption in air', () => {
  it.each(references('air.'))('$id dB/km, $source', (reference) => {
    expect(agrees(computed(reference.id), reference)).toBe(true);
  });

  it('stays under 0.5 dB at 8 kHz within 4 m at 20 degrees C from 50 % humidity up', () => {
    for (const humidity of [50, 70, 100]) {
      expect(4 * absorption({ temperature: 20, humidity }, 8000)).toBeLessThan(0.5);
    }
  });
});
