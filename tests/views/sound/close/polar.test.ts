import { describe, expect, it } from 'vitest';
import { polarPoints } from '../../../../src/views/sound/close/polar.ts';
import { sound } from '../sampleSound.ts';

describe('the points of a polar plot', () => {
  it('have the own source as 0 at 0 dB, then every other piece once, the loudest first', () => {
    for (const row of sound.close) {
      const points = polarPoints(row, 0);
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
        { polar: [{ ...heard, from: { x, y: 0, z: 0 } }], source: 'b', level: 100 },
        100,
      )[0];
    expect(at(99)).toMatchObject({ side: 'left', number: 1, level: -10 });
    expect(at(101)).toMatchObject({ side: 'right' });
  });
});
