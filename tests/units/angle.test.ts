import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cosDeg,
  sinDeg,
  toDegrees,
  toRadians,
  turnBetween,
  wrapDegrees,
} from '../../src/units/angle.ts';

/** Angles as people and files have them: at most nine decimals. */
const typed = fc.oneof(
  fc.integer({ min: -3600, max: 3600 }).map((n) => n / 10),
  fc.integer({ min: -360e9, max: 360e9 }).map((n) => n / 1e9),
);
/** 180 - a, as exact as a number with nine decimals can be. */
const mirrored = (angle: number): number => Math.round((180 - angle) * 1e9) / 1e9;

describe('degrees and radians', () => {
  it('go over into each other', () => {
    expect(toRadians(180)).toBe(Math.PI);
    expect(toDegrees(Math.PI / 2)).toBe(90);
    fc.assert(
      fc.property(typed, (a) => {
        expect(toDegrees(toRadians(a))).toBeCloseTo(a, 9);
      }),
    );
  });
});

describe('sinDeg and cosDeg', () => {
  it('have exactly mirrored values for mirrored angles', () => {
    fc.assert(
      fc.property(typed, (a) => {
        expect(sinDeg(mirrored(a)) === sinDeg(a)).toBe(true);
        expect(cosDeg(mirrored(a)) === -cosDeg(a)).toBe(true);
        expect(sinDeg(wrapDegrees(mirrored(a))) === sinDeg(a)).toBe(true);
        expect(cosDeg(wrapDegrees(mirrored(a))) === -cosDeg(a)).toBe(true);
        expect(sinDeg(-a) === -sinDeg(a)).toBe(true);
        expect(cosDeg(-a) === cosDeg(a)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('have exactly mirrored values for every tenth of a degree', () => {
    for (let n = 0; n < 3600; n++) {
      const a = n / 10;
      expect(sinDeg(180 - a) === sinDeg(a), `sine of ${a}`).toBe(true);
      expect(cosDeg(180 - a) === -cosDeg(a), `cosine of ${a}`).toBe(true);
    }
  });

  it('are the sine and cosine of the angle', () => {
    fc.assert(
      fc.property(typed, (a) => {
        expect(sinDeg(a)).toBeCloseTo(Math.sin((a * Math.PI) / 180), 13);
        expect(cosDeg(a)).toBeCloseTo(Math.cos((a * Math.PI) / 180), 13);
        expect(sinDeg(a) ** 2 + cosDeg(a) ** 2).toBeCloseTo(1, 14);
      }),
    );
  });

  it.each([
    [0, 0, 1],
    [90, 1, 0],
    [180, 0, -1],
    [270, -1, 0],
    [360, 0, 1],
    [450, 1, 0],
    [-90, -1, 0],
  ])('are exact at %s degrees', (angle, sine, cosine) => {
    expect(sinDeg(angle) + 0).toBe(sine);
    expect(cosDeg(angle) + 0).toBe(cosine);
  });

  it('are equal at 45 degrees', () => {
    expect(sinDeg(45)).toBeCloseTo(Math.SQRT1_2, 15);
    expect(cosDeg(45)).toBeCloseTo(Math.SQRT1_2, 15);
  });
});

describe('wrapDegrees', () => {
  const anyAngle = fc.oneof(typed, fc.double({ min: -1e6, max: 1e6, noNaN: true }));

  it('gives the same direction in [0, 360)', () => {
    fc.assert(
      fc.property(anyAngle, (a) => {
        const wrapped = wrapDegrees(a);
        expect(wrapped).toBeGreaterThanOrEqual(0);
        expect(wrapped).toBeLessThan(360);
        const turns = (wrapped - a) / 360;
        expect(turns).toBeCloseTo(Math.round(turns), 9);
      }),
    );
  });

  it.each([
    [-90, 270],
    [360, 0],
    [720.5, 0.5],
    [-0, 0],
    [-1e-20, 0],
  ])('turns %s into %s', (angle, wrapped) => {
    expect(wrapDegrees(angle)).toBe(wrapped);
  });
});

describe('turnBetween', () => {
  it('goes the short way round', () => {
    expect(turnBetween(350, 10)).toBe(20);
    expect(turnBetween(10, 350)).toBe(-20);
    expect(turnBetween(0, 180)).toBe(180);
    expect(turnBetween(180, 0)).toBe(180);
    expect(turnBetween(90, 90)).toBe(0);
  });

  it('leads from one direction to the other, by at most half a turn', () => {
    fc.assert(
      fc.property(typed, typed, (from, to) => {
        const turn = turnBetween(from, to);
        expect(turn).toBeGreaterThan(-180);
        expect(turn).toBeLessThanOrEqual(180);
        expect(cosDeg(from + turn)).toBeCloseTo(cosDeg(to), 9);
        expect(sinDeg(from + turn)).toBeCloseTo(sinDeg(to), 9);
      }),
    );
  });
});
