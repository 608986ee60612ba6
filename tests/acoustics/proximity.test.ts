import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PATTERNS, type PatternName, patternOf } from '../../src/acoustics/pattern.ts';
import { nearLevel, proximityBoost } from '../../src/acoustics/proximity.ts';
import { agrees, references } from './reference.ts';

const speed = 343.2;
const named: Readonly<Record<string, PatternName>> = {
  figure8: 'figure8',
  cardioid: 'cardioid',
  supercardioid_37: 'supercardioid37',
  hypercardioid: 'hypercardioid',
};

const anyPattern = fc.double({ min: 0, max: 1, noNaN: true }).map(patternOf);
const anyNear = fc.record({
  frequency: fc.double({ min: 20, max: 20_000, noNaN: true }),
  distance: fc.double({ min: 10, max: 3000, noNaN: true }),
  angle: fc.double({ min: 0, max: 180, noNaN: true }),
  speed: fc.constant(speed),
});

describe('H7 and H8 on the axis, against values computed from the spherical wave', () => {
  it.each(references('prox.'))('$id, $source', (reference) => {
    const match = /^prox\.(\w+)\.f(\d+)\.r([\d.]+)$/.exec(reference.id);
    const pattern = PATTERNS[named[match?.[1] ?? ''] ?? 'omni'];
    const near = {
      frequency: Number(match?.[2]),
      distance: 1000 * Number(match?.[3]),
      angle: 0,
      speed,
    };
    expect(agrees(nearLevel(pattern, near), reference)).toBe(true);
    expect(agrees(proximityBoost(pattern, near), reference)).toBe(true);
  });
});

describe('identities of the spherical wave', () => {
  const at = (distance: number, angle: number) => ({ frequency: 100, distance, angle, speed });

  it('a cardioid at r is a figure-8 at 2r, on the axis', () => {
    for (const distance of [30, 100, 450]) {
      const cardioid = nearLevel(PATTERNS.cardioid, at(distance, 0));
      expect(cardioid).toBeCloseTo(nearLevel(PATTERNS.figure8, at(2 * distance, 0)), 9);
    }
  });

  it('a cardioid has no boost at 90 degrees, at any distance (Eargle 1994, section 88)', () => {
    for (const distance of [30, 100, 450]) {
      expect(nearLevel(PATTERNS.cardioid, at(distance, 90))).toBeCloseTo(-6.0206, 4);
      expect(proximityBoost(PATTERNS.cardioid, at(distance, 90))).toBeCloseTo(0, 9);
    }
  });

  it("a cardioid's rear null is gone near the source: +8.73 dB at 100 Hz and 0.1 m", () => {
    expect(nearLevel(PATTERNS.cardioid, at(100, 180))).toBeCloseTo(8.73, 2);
  });

  it('a figure-8 gains 3.01 dB where frequency times distance is c / 2 pi', () => {
    const near = { frequency: 100, distance: (10 * speed) / (2 * Math.PI), angle: 0, speed };
    expect(proximityBoost(PATTERNS.figure8, near)).toBeCloseTo(3.0103, 4);
  });
});

describe('laws of the proximity boost', () => {
  it('depends on frequency times distance only', () => {
    fc.assert(
      fc.property(anyPattern, anyNear, (pattern, near) => {
        const other = { ...near, frequency: near.frequency / 2, distance: near.distance * 2 };
        expect(proximityBoost(pattern, other)).toBeCloseTo(proximityBoost(pattern, near), 9);
      }),
    );
  });

  it('is never below 0 and never grows with the distance', () => {
    fc.assert(
      fc.property(anyPattern, anyNear, (pattern, near) => {
        const boost = proximityBoost(pattern, near);
        const farther = proximityBoost(pattern, { ...near, distance: near.distance * 1.3 });
        expect(farther).toBeGreaterThanOrEqual(0);
        expect(boost).toBeGreaterThanOrEqual(farther);
      }),
    );
  });

  it('an omni has none', () => {
    fc.assert(
      fc.property(anyNear, (near) => {
        expect(proximityBoost(PATTERNS.omni, near)).toBe(0);
      }),
    );
  });
});
