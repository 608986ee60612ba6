import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull } from '../../src/geometry/convexPolygon.ts';
import { EndRow } from '../../src/geometry/endRow.ts';
import { Tangents } from '../../src/geometry/tangents.ts';

const weights = { each: 0.25, once: 2 };
const floor = new Tangents<'kit'>([], undefined);
/** Ends on a slanting line, 5 mm apart for each step. */
const endAt = (step: number) => floor.place({ x: 3 * step, y: 4 * step });
const steps = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 6 });

describe('a row of ends', () => {
  it('E1: costs the ways to all ends, and the row from the first to the last of root and ends', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: -9, max: 9 }), (all, root) => {
        const row = new EndRow(floor, [...all, -9, 9].map(endAt), weights);
        const ways = [...all.keys()];
        const fans = all.reduce((sum, step) => sum + 5 * Math.abs(step - root), 0);
        const extent = 5 * (Math.max(root, ...all) - Math.min(root, ...all));
        expect(row.cost(endAt(root), ways)).toBeCloseTo(0.25 * fans + 2 * extent, 9);
      }),
    );
  });

  it('E1: costs as much in parts as at once', () => {
    fc.assert(
      fc.property(steps, fc.nat(5), (all, cut) => {
        const row = new EndRow(floor, all.map(endAt), weights);
        const [first, rest] = [[...all.keys()].slice(0, cut), [...all.keys()].slice(cut)];
        const root = endAt(1);
        const parts = row.cost(root, first) + row.cost(root, rest, first);
        expect(parts).toBeCloseTo(row.cost(root, [...first, ...rest]), 9);
      }),
    );
  });

  it('E1: costs more than anything where something stands between root and end', () => {
    const corners = [
      { x: 1, y: -1 },
      { x: 2, y: -1 },
      { x: 2, y: 1 },
      { x: 1, y: 1 },
    ];
    const wall = convexHull(corners);
    if (!wall) throw new Error('a square was expected');
    const tangents = new Tangents([wall], undefined);
    const ends = [0, 3].map((x) => tangents.place({ x, y: 0 }));
    const row = new EndRow(tangents, ends, weights);
    const root = tangents.place({ x: 0, y: 5 });
    expect(row.cost(root, [0])).toBeLessThan(20);
    const [first] = ends;
    if (first) expect(row.cost(first, [1])).toBe(Number.POSITIVE_INFINITY);
  });

  it('lets a way pass the ends between, in order', () => {
    const all = [4, 1, 3, -2];
    const row = new EndRow(floor, all.map(endAt), weights);
    const passed = row.between(endAt(0), 0, [0, 1, 2, 3]).map(({ point }) => point.x / 3);
    expect(passed).toEqual([1, 3, 4]);
    expect(row.between(endAt(4), 0, [0, 1, 2, 3])).toEqual([]);
  });
});
