import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barLength, rulerSteps, SCALES, scaleFor } from '../../../src/sheet/paper/scale.ts';

const unit = fc.constantFrom('mm' as const, 'in' as const);
const length = fc.double({ min: 100, max: 20_000, noNaN: true });

describe('the scale of a drawing', () => {
  test('is the largest at which it fits', () => {
    fc.assert(
      fc.property(length, length, (width, height) => {
        const room = { width: 180, height: 160 };
        const scale = scaleFor({ width, height }, room);
        expect(width / scale <= room.width && height / scale <= room.height).toBe(true);
        const larger = SCALES[SCALES.indexOf(scale as (typeof SCALES)[number]) - 1];
        if (larger === undefined) return;
        expect(width / larger > room.width || height / larger > room.height).toBe(true);
      }),
    );
  });

  test('has a bar of a round length that is long enough to measure', () => {
    for (const scale of SCALES) {
      for (const each of ['mm', 'in'] as const) {
        const drawn = barLength(scale, each, 70) / scale;
        expect(drawn).toBeLessThanOrEqual(70);
        expect(drawn).toBeGreaterThanOrEqual(20);
      }
    }
  });

  test('has rulers whose numbers stand at ticks', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SCALES), unit, (scale, each) => {
        const { tick, number } = rulerSteps(scale, each);
        expect(Math.abs(number / tick - Math.round(number / tick))).toBeLessThan(1e-9);
      }),
    );
  });
});
