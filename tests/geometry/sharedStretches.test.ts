import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wayLength } from '../../src/geometry/plan.ts';
import { sharedStretches } from '../../src/geometry/sharedStretches.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';

const gridPoint: fc.Arbitrary<Vec2> = fc.record({
  x: fc.integer({ min: 0, max: 3 }),
  y: fc.integer({ min: 0, max: 3 }),
});
const ways = fc.array(fc.array(gridPoint, { minLength: 1, maxLength: 5 }), { maxLength: 5 });

/** Every line of some ways with the ways that have it, found line by line. */
function linesOf(all: readonly (readonly Vec2[])[]): Map<string, Set<number>> {
  const lines = new Map<string, Set<number>>();
  for (const [way, points] of all.entries()) {
    for (const [i, q] of points.entries()) {
      const p = points[i - 1] ?? q;
      if (p.x === q.x && p.y === q.y) continue;
      const key = [`${p.x} ${p.y}`, `${q.x} ${q.y}`].sort().join(' - ');
      lines.set(key, (lines.get(key) ?? new Set()).add(way));
    }
  }
  return lines;
}

describe('shared stretches', () => {
  it('D1: show every line once, with all ways that have it, in order', () => {
    fc.assert(
      fc.property(ways, (all) => {
        const lines = linesOf(all);
        const shown = new Set<string>();
        for (const { points, length, ways: inIt } of sharedStretches(all)) {
          expect(inIt).toEqual([...inIt].sort((a, b) => a - b));
          expect(length).toBe(wayLength(points));
          for (const key of linesOf([points]).keys()) {
            expect(shown.has(key)).toBe(false);
            shown.add(key);
            expect(new Set(inIt)).toEqual(lines.get(key));
          }
        }
        expect(shown).toEqual(new Set(lines.keys()));
      }),
    );
  });

  it('are as few as the ways allow: lines in a row with the same ways are one', () => {
    const [a, b, c, d] = [0, 1, 2, 3].map((x): Vec2 => ({ x, y: 0 }));
    if (!a || !b || !c || !d) throw new Error('four points were expected');
    const side: Vec2 = { x: 1, y: 1 };
    const found = sharedStretches([
      [a, b, c, d],
      [side, b, c, d],
    ]);
    expect(found).toEqual([
      { points: [a, b], length: 1, ways: [0] },
      { points: [b, c, d], length: 2, ways: [0, 1] },
      { points: [side, b], length: 1, ways: [1] },
    ]);
  });
});
