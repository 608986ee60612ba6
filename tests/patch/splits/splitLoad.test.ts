import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitLoad } from '../../../src/patch/splits/splitLoad.ts';

const ohms = fc.double({ min: 50, max: 50_000, noNaN: true });

/** The voltage at the mic of 1 V behind a source impedance: the node's currents add up to nothing. By bisection, not by formula. */
function nodeVoltage(source: number, legs: readonly number[]): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    const drawn = legs.reduce((sum, leg) => sum + middle / leg, 0);
    if ((1 - middle) / source > drawn) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('D1 and D2 load and level lost', () => {
  // By hand: 150 ohm into 2000 gives 0.93023, into 1000 gives 0.86957: 0.586 dB less.
  it('two inputs of 2 kilohm on a mic of 150 ohm lose 0.59 dB', () => {
    const { load, lost } = splitLoad(150, [2000, 2000]);
    expect(load).toBeCloseTo(1000, 9);
    expect(lost[0]).toBeCloseTo(0.586, 3);
  });

  it('agree with the voltages of the circuit', () => {
    fc.assert(
      fc.property(ohms, fc.array(ohms, { minLength: 1, maxLength: 5 }), (source, legs) => {
        const together = nodeVoltage(source, legs);
        splitLoad(source, legs).lost.forEach((lost, index) => {
          const alone = nodeVoltage(source, legs.slice(index, index + 1));
          expect(lost).toBeCloseTo(20 * Math.log10(alone / together), 6);
        });
      }),
    );
  });

  it('one more leg loads more and takes more from every other; one alone loses nothing', () => {
    fc.assert(
      fc.property(
        ohms,
        fc.array(ohms, { minLength: 1, maxLength: 4 }),
        ohms,
        (source, legs, next) => {
          const [before, after] = [splitLoad(source, legs), splitLoad(source, [...legs, next])];
          expect(after.load).toBeLessThan(before.load);
          expect(after.load).toBeLessThan(Math.min(...legs, next));
          before.lost.forEach((lost, index) => {
            expect(after.lost[index]).toBeGreaterThan(lost);
          });
          expect(splitLoad(source, [next]).lost[0]).toBeCloseTo(0, 9);
        },
      ),
    );
  });
});
