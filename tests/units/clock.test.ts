import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turnBetween } from '../../src/units/angle.ts';
import { clockText, directionText, oClockText } from '../../src/units/clock.ts';

const degreesOf = (text: string): number => {
  const [hour = 0, minute = 0] = text.split(':').map(Number);
  return 90 - ((hour % 12) * 60 + minute) / 2;
};

/** Half and whole degrees, so that every middle between two readings is met. */
const azimuths = fc.integer({ min: -720, max: 720 }).map((half) => half / 2);

const degreesOfHours = (text: string): number => {
  const [, past, hour] = /^(half past )?(\d+)(?: o'clock)?$/.exec(text) ?? [];
  return 90 - (Number(hour) + (past === undefined ? 0 : 0.5)) * 30;
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

describe('a direction as a technician says it', () => {
  test('is never more than 7.5 degrees off', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (azimuth) => {
        const off = turnBetween(azimuth, degreesOfHours(oClockText(azimuth)));
        expect(Math.abs(off)).toBeLessThanOrEqual(7.5 + 1e-9);
      }),
    );
  });

  test('mirrored, it is the mirrored clock: 4 is 8, half past 1 is half past 10', () => {
    fc.assert(
      fc.property(azimuths, (azimuth) => {
        const own = degreesOfHours(oClockText(azimuth));
        const mirrored = degreesOfHours(oClockText(180 - azimuth));
        expect(turnBetween(180 - own, mirrored)).toBeCloseTo(0, 9);
        expect(
          turnBetween(180 - degreesOf(clockText(azimuth)), degreesOf(clockText(180 - azimuth))),
        ).toBeCloseTo(0, 9);
      }),
    );
  });

  test("has 12 away from the player, 3 at the player's right, and half hours where nearer", () => {
    expect([90, 0, 270, 180, 40, 120, 105, 98, 97, 82.5].map(oClockText)).toEqual([
      "12 o'clock",
      "3 o'clock",
      "6 o'clock",
      "9 o'clock",
      'half past 1',
      "11 o'clock",
      'half past 11',
      'half past 11',
      "12 o'clock",
      'half past 12',
    ]);
  });

  test('stands behind the degrees, which are those of one turn', () => {
    expect([40, -60, 359.7].map(directionText)).toEqual([
      '40°, about half past 1',
      "300°, about 5 o'clock",
      "0°, about 3 o'clock",
    ]);
  });
});
