import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { P48, type PhantomSupply, shortCircuit, voltsAtMic } from '../../src/patch/phantom.ts';
import { agrees, references } from '../acoustics/reference.ts';

/** Section 5 of the reference notes: feed resistors 1.2 kilohm (24 V) and 680 ohm (12 V). */
const SUPPLIES: Readonly<Record<string, PhantomSupply>> = {
  P48,
  P24: { volts: 24, feed: 1200, most: 10 },
  P12: { volts: 12, feed: 680, most: 15 },
};

describe('V1 and V2 phantom power', () => {
  it('leaves at the mic what the reference values say, at the largest current', () => {
    const published = references('phantom.');
    expect(published).toHaveLength(3);
    for (const reference of published) {
      const supply = SUPPLIES[reference.id.split('.')[1] ?? ''];
      expect(supply && agrees(voltsAtMic(supply, supply.most), reference)).toBe(true);
    }
  });

  // Computed in section 5 of the reference notes from 44, 48 and 52 V.
  it.each([
    [3, [33.8, 37.8, 41.8]],
    [5, [27, 31, 35]],
    [10, [10, 14, 18]],
  ])('at %d mA', (current, volts) => {
    const found = [44, 48, 52].map((supply) => voltsAtMic({ ...P48, volts: supply }, current));
    found.forEach((value, index) => {
      expect(value).toBeCloseTo(volts[index] ?? 0, 9);
    });
  });

  // Reference notes, section 5: both legs shorted 48 / 3400 = 14.12 mA.
  it('drives 14.12 mA into a line with both legs shorted, twice that from two supplies', () => {
    expect(shortCircuit(P48)).toBeCloseTo(14.12, 2);
    expect(shortCircuit(P48, 2)).toBeCloseTo(28.24, 2);
  });

  it('more supplies leave more, none leaves nothing, and the short is where nothing is left', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 14, noNaN: true }),
        fc.integer({ min: 1, max: 4 }),
        (current, n) => {
          expect(voltsAtMic(P48, current, n + 1)).toBeGreaterThan(voltsAtMic(P48, current, n));
          expect(voltsAtMic(P48, current, 0)).toBe(0);
          expect(voltsAtMic(P48, shortCircuit(P48, n), n)).toBeCloseTo(0, 9);
        },
      ),
    );
  });
});
