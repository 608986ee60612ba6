import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energySum, toDecibels, toEnergy } from '../../src/acoustics/decibels.ts';

const levels = fc.array(fc.double({ min: -60, max: 140, noNaN: true }), {
  minLength: 1,
  maxLength: 9,
});

describe('energy sums', () => {
  it('two equal levels add 3.01 dB, none is silence', () => {
    expect(energySum([80, 80])).toBeCloseTo(83.0103, 4);
    expect(energySum([])).toBe(Number.NEGATIVE_INFINITY);
  });

  it('never fall below the loudest, nor above it by more than 10 lg of their number', () => {
    fc.assert(
      fc.property(levels, (all) => {
        const sum = energySum(all);
        const most = Math.max(...all);
        expect(sum).toBeGreaterThanOrEqual(most - 1e-9);
        expect(sum).toBeLessThanOrEqual(most + toDecibels(all.length) + 1e-9);
      }),
    );
  });

  it('level and energy undo each other', () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 150, noNaN: true }), (level) => {
        expect(toDecibels(toEnergy(level))).toBeCloseTo(level, 9);
      }),
    );
  });
});
