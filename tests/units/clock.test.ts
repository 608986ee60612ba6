import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turnBetween } from '../../src/units/angle.ts';
import { clockText } from '../../src/units/clock.ts';

const degreesOf = (text: string): number => {
  const [hour = 0, minute = 0] = text.split(':').map(Number);
  return 90 - ((hour % 12) * 60 + minute) / 2;
};

describe('a direction as a clock face tells it', () => {
  test('is never more than 2.5 degrees off', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (azimuth) => {
        expect(Math.abs(turnBetween(azimuth, degreesOf(clockText(azimuth))))).toBeLessThanOrEqual(
          2.5 + 1e-9,
        );
      }),
    );
  });

  test('has 12 toward the audience and runs clockwise as seen from above', () => {
    expect([90, 0, 270, 180, 60, 40, 92].map(clockText)).toEqual([
      '12:00',
      '3:00',
      '6:00',
      '9:00',
      '1:00',
      '1:40',
      '12:00',
    ]);
  });
});
