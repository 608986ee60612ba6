import FFT from 'fft.js';
import { describe, expect, it } from 'vitest';
import { combNulls, delayOf, phaseAfter, ripple, type Start } from '../../src/acoustics/comb.ts';
import { agrees, references } from './reference.ts';

const speed = 343.2;

describe('H9 ripple', () => {
  it.each(references('comb.ripple.'))('$id, $source', (reference) => {
    const difference = Number.parseFloat(reference.id.slice('comb.ripple.'.length));
    expect(agrees(ripple(difference).peakToDip, reference)).toBe(true);
  });

  it('is 20 lg 2 = 6.02 dB peak to dip at 3:1, not 1 dB; 1 dB takes 24.8 dB of difference', () => {
    const { peak, dip, peakToDip } = ripple(20 * Math.log10(3));
    expect(peakToDip).toBeCloseTo(20 * Math.log10(2), 9);
    expect([peak, dip].map((level) => Number(level.toFixed(2)))).toEqual([2.5, -3.52]);
    expect(ripple(24.8).peakToDip).toBeCloseTo(1, 2);
  });

  it('does not ask which of the two is louder', () => {
    expect(ripple(-7)).toEqual(ripple(7));
  });
});

describe('H10 nulls', () => {
  const lowest = references('comb.null.').filter(({ id }) => !id.endsWith('1ms'));

  it.each(lowest)('$id, $source', (reference) => {
    const metres = Number.parseFloat(reference.id.slice('comb.null.'.length));
    const [null1 = 0] = combNulls(1000 * metres, speed, 'equal');
    expect(agrees(null1, reference)).toBe(true);
  });

  it('1 ms gives 500 Hz and then every 1000 Hz (Master Handbook of Acoustics, ch. 10)', () => {
    const [reference] = references('comb.null.1ms');
    const nulls = (start: Start) =>
      combNulls(-speed, speed, start).map((f) => Number(f.toFixed(6)));
    expect(nulls('equal')).toEqual([reference?.value, 1500, 2500]);
    expect(nulls('opposite')).toEqual([1000, 2000, 3000]);
  });

  it('there is none without a path difference', () => {
    expect(combNulls(0, speed, 'equal')).toEqual([]);
    // Two mics as far from a drum, but for rounding.
    expect(combNulls(3e-11, speed, 'equal')).toEqual([]);
  });
});

describe('H9 and H10 against a synthesised sum, measured with a Fourier transform', () => {
  const rate = 192_000;
  const size = 2 ** 16;
  const fft = new FFT(size);

  /** A short click centred on a time in samples, which need not be whole. */
  function addClick(signal: number[], at: number, gain: number): void {
    for (let n = Math.max(0, Math.ceil(at - 12)); n <= at + 12; n += 1) {
      signal[n] = (signal[n] ?? 0) + gain * Math.exp(-(((n - at) / 1.5) ** 2));
    }
  }

  function spectrum(clicks: readonly (readonly [at: number, gain: number])[]): number[] {
    const signal = new Array<number>(size).fill(0);
    for (const [at, gain] of clicks) addClick(signal, at, gain);
    const out: number[] = fft.createComplexArray();
    fft.realTransform(out, signal);
    return Array.from({ length: size / 2 }, (_, bin) =>
      Math.hypot(out[2 * bin] ?? 0, out[2 * bin + 1] ?? 0),
    );
  }

  const alone = spectrum([[100, 1]]);
  const bin = rate / size;

  /** Level of the sum against the first click alone, and the frequencies of its lowest dips. */
  function measured(pathDifference: number, difference: number, start: Start) {
    const delay = (rate * pathDifference) / 1000 / speed;
    const gain = (start === 'equal' ? 1 : -1) * 10 ** (-difference / 20);
    const both = spectrum([
      [100, 1],
      [100 + delay, gain],
    ]);
    const audible = both.slice(0, Math.round(20_000 / bin));
    const level = audible.map((value, i) => 20 * Math.log10(value / (alone[i] ?? 1)));
    const dips = level.flatMap((here, i) => {
      const [before, after] = [level[i - 1], level[i + 1]];
      if (before === undefined || after === undefined || here > before || here >= after) return [];
      const shift = (before - after) / (2 * (before - 2 * here + after));
      return [(i + shift) * bin];
    });
    return { dips: dips.slice(0, 3), peak: Math.max(...level), dip: Math.min(...level) };
  }

  const cases = [
    { pathDifference: 61, difference: 3, start: 'equal' },
    { pathDifference: 200, difference: 1, start: 'opposite' },
    { pathDifference: 343, difference: 6, start: 'equal' },
    { pathDifference: 777, difference: 9.542, start: 'opposite' },
    { pathDifference: 1234, difference: 12, start: 'equal' },
  ] as const;

  it.each(cases)('$pathDifference mm, $difference dB, $start', (one) => {
    const found = measured(one.pathDifference, one.difference, one.start);
    const expected = combNulls(one.pathDifference, speed, one.start);
    expect(found.dips).toHaveLength(3);
    for (const [i, frequency] of expected.entries()) {
      expect(Math.abs((found.dips[i] ?? 0) / frequency - 1)).toBeLessThan(0.001);
    }
    const { peak, dip } = ripple(one.difference);
    expect(found.peak).toBeCloseTo(peak, 1);
    expect(found.dip).toBeCloseTo(dip, 1);
  });
});

describe('H11 delay', () => {
  it.each(references('time.'))('$id, $source', (reference) => {
    const match = /^time\.([\d.]+)m(\.48k)?$/.exec(reference.id);
    const delay = delayOf(1000 * Number(match?.[1]), speed);
    expect(agrees(match?.[2] ? delay.samples48 : delay.ms, reference)).toBe(true);
  });

  it('twice as many samples at 96 kHz; 8.7413 ms and 839.16 of them for 3 m', () => {
    const { samples48, samples96 } = delayOf(3000, speed);
    expect(samples96).toBe(2 * samples48);
    expect(samples96).toBeCloseTo(839.16, 2);
  });
});

describe('H12 phase', () => {
  it('turns once per period and counts an opposite start as half a turn', () => {
    expect(phaseAfter(2.5, 100, 'equal')).toBeCloseTo(90, 9);
    expect(phaseAfter(-2.5, 100, 'equal')).toBeCloseTo(-90, 9);
    expect(phaseAfter(10, 100, 'equal')).toBeCloseTo(0, 9);
    expect(phaseAfter(2.5, 100, 'opposite')).toBeCloseTo(-90, 9);
    expect(phaseAfter(0, 100, 'opposite')).toBe(180);
  });
});
