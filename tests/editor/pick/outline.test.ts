import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { awayFrom, type Outline } from '../../../src/editor/pick/outline.ts';
import { vec } from '../../../src/geometry/vector.ts';
import { cosDeg, sinDeg } from '../../../src/units/angle.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const spot = fc.record({ x: number(-1000, 1000), y: number(-1000, 1000) });
const leaning = (tilt: number, toward: number, radius: number): Outline => ({
  kind: 'disc',
  disc: {
    centre: vec(0, 0, 700),
    normal: vec(sinDeg(tilt) * cosDeg(toward), sinDeg(tilt) * sinDeg(toward), cosDeg(tilt)),
    radius,
  },
});

describe('how far a finger is from an outline', () => {
  test('a level disc is met inside its circle, and outside by the distance to it', () => {
    fc.assert(
      fc.property(spot, number(50, 400), (p, radius) => {
        const away = awayFrom(leaning(0, 0, radius), p);
        expect(away).toBeCloseTo(Math.max(0, Math.hypot(p.x, p.y) - radius), 6);
      }),
    );
  });

  test('a leaning disc is met where it is seen: on the projection of its points', () => {
    fc.assert(
      fc.property(
        number(0, 75),
        number(0, 360),
        number(0, 360),
        number(0, 1.6),
        (tilt, toward, round, share) => {
          // A point of the disc's plane at a share of its radius, built from the plane's own axes.
          const [c, s] = [cosDeg(round) * 200 * share, sinDeg(round) * 200 * share];
          const p = {
            x: c * cosDeg(tilt) * cosDeg(toward) - s * sinDeg(toward),
            y: c * cosDeg(tilt) * sinDeg(toward) + s * cosDeg(toward),
          };
          const away = awayFrom(leaning(tilt, toward, 200), p);
          if (share < 0.999) expect(away).toBe(0);
          if (share > 1.001) expect(away).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('a line with a width is met within its radius, an area inside its ring', () => {
    const line: Outline = { kind: 'line', a: { x: 0, y: 0 }, b: { x: 100, y: 0 }, radius: 10 };
    expect(awayFrom(line, { x: 50, y: 9 })).toBe(0);
    expect(awayFrom(line, { x: 50, y: 30 })).toBeCloseTo(20, 9);
    expect(awayFrom(line, { x: 130, y: 40 })).toBeCloseTo(40, 9);
    const area: Outline = {
      kind: 'area',
      ring: [
        { x: 0, y: 0 },
        { x: 100, y: 0 },
        { x: 100, y: 50 },
        { x: 0, y: 50 },
      ],
    };
    expect(awayFrom(area, { x: 50, y: 25 })).toBe(0);
    expect(awayFrom(area, { x: 50, y: 70 })).toBeCloseTo(20, 9);
  });
});
