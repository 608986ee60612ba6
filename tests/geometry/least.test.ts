import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastBounded, leastConvex } from '../../src/geometry/least.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('leastConvex', () => {
  it('finds the bottom of a parabola wherever it lies, ends included', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (bottom, steep) => {
          const held = Math.min(1, Math.max(0, bottom));
          const found = leastConvex((t) => steep * (t - bottom) ** 2);
          expect(found.at).toBeCloseTo(held, 6);
          expect(found.value).toBeCloseTo(steep * (held - bottom) ** 2, 6);
        },
      ),
    );
  });

  it('finds the kink of a function that is not smooth', () => {
    fc.assert(
      fc.property(share, (kink) => {
        expect(leastConvex((t) => 300 * Math.abs(t - kink)).value).toBeLessThan(1e-4);
      }),
    );
  });
});

describe('leastBounded', () => {
  /** Several valleys with slope 50; over an interval no lower than by that slope from its middle. */
  const valleysAt = (valleys: readonly number[], depth: number) => {
    const value = (t: number) =>
      Math.min(...valleys.map((v, i) => 50 * Math.abs(t - v) + i * depth));
    const floor = (low: number, high: number) => value((low + high) / 2) - 25 * (high - low);
    return { value, floor };
  };

  it('is within its tolerance of 2000 samples of a function with many valleys', () => {
    fc.assert(
      fc.property(fc.array(share, { minLength: 1, maxLength: 6 }), share, (valleys, depth) => {
        const { value, floor } = valleysAt(valleys, depth);
        const samples = Array.from({ length: 2001 }, (_, i) => value(i / 2000));
        const found = leastBounded({ value, floor, tolerance: 0.01, below: 1000 });
        expect(found.value).toBeLessThanOrEqual(Math.min(...samples) + 0.01);
        expect(found.value).toBe(value(found.at));
      }),
      { numRuns: 50 },
    );
  });

  it('may stop early when nothing lies below what matters, and then answers not below it', () => {
    const { value, floor } = valleysAt([0.2], 0);
    const raised = {
      value: (t: number) => value(t) + 20,
      floor: (low: number, high: number) => floor(low, high) + 20,
    };
    expect(leastBounded({ ...raised, tolerance: 0.1, below: 5 }).value).toBeGreaterThanOrEqual(5);
  });
});
