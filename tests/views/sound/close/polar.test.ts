import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnBetween } from '../../../../src/units/angle.ts';
import { polarPoints, rimAngles } from '../../../../src/views/sound/close/polar.ts';
import { sound } from '../sampleSound.ts';

const cardioid = { a: 0.5, b: 0.5 };

describe('the points of a polar plot', () => {
  it('have the own source as 0 at 0 dB, then every other piece once, the loudest first', () => {
    for (const row of sound.close) {
      const points = polarPoints(row, 0, cardioid);
      expect(points.map(({ number }) => number)).toEqual(row.polar.map((_, i) => i));
      expect(points[0]).toMatchObject({ piece: row.source, level: 0 });
      expect(new Set(points.map(({ piece }) => piece)).size).toBe(row.polar.length);
      const levels = points.slice(1).map(({ level }) => level);
      expect(levels).toEqual(levels.toSorted((p, q) => q - p));
    }
  });

  it('lie on the side on which the player sees them', () => {
    const heard = { piece: 'a', level: 90, angle: 40, distance: 300 };
    const at = (x: number) =>
      polarPoints(
        { polar: [{ ...heard, from: { x, y: 0, z: 0 } }], source: 'b', level: 100, shell: null },
        100,
        cardioid,
      )[0];
    expect(at(99)).toMatchObject({ side: 'left', number: 1, level: -10 });
    expect(at(101)).toMatchObject({ side: 'right' });
  });

  it('are in the null where the pattern hears 15 dB less, and nowhere inside a drum', () => {
    const at = (angle: number, shell: string | null, pattern = cardioid) =>
      polarPoints(
        {
          polar: [{ piece: 'a', level: 90, angle, distance: 300, from: { x: 0, y: 0, z: 0 } }],
          source: 'b',
          level: 100,
          shell,
        },
        0,
        pattern,
      )[0]?.inNull;
    // 20 lg |0.5 + 0.5 cos 130.4| = -15.0 dB
    expect([at(130, null), at(131, null), at(180, null)]).toEqual([false, true, true]);
    expect(at(180, 'kick')).toBe(false);
    expect(at(180, null, { a: 1, b: 0 })).toBe(false);
    expect(at(90, null, { a: 0, b: 1 })).toBe(true);
  });
});

describe('numbers round the rim', () => {
  const apart = 10;
  const anyAngles = fc.array(fc.double({ min: -180, max: 180, noNaN: true }), { maxLength: 8 });
  const between = (p: number, q: number) => Math.abs(turnBetween(p, q));

  it('never overlap, also behind the mic where the angles meet', () => {
    fc.assert(
      fc.property(anyAngles, (angles) => {
        const rims = rimAngles(angles, apart);
        for (const [i, one] of rims.entries()) {
          for (const other of rims.slice(i + 1)) {
            expect(between(one, other)).toBeGreaterThan(apart - 1e-6);
          }
        }
      }),
    );
  });

  it('stay at their own angle where there is room, and within their crowd where there is none', () => {
    expect(rimAngles([-170, 20, 90, 175], apart)).toEqual([-170, 20, 90, 175]);
    expect(rimAngles([40, 40, 170], apart)).toEqual([35, 45, 170]);
    const behind = rimAngles([179, -179], apart);
    expect(behind.map((angle) => Math.round(angle))).toEqual([175, -175]);
  });
});
