import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assignStock } from '../../src/cabling/assignStock.ts';

/** Every way to give cables to runs, tried one by one: most runs served first, then least cable. */
function best(needed: readonly number[], cables: readonly number[]): readonly [number, number] {
  const [run, ...others] = needed;
  if (run === undefined) return [0, 0];
  let found = best(others, cables);
  for (const [i, cable] of cables.entries()) {
    if (cable < run) continue;
    const [served, length] = best(others, cables.toSpliced(i, 1));
    const [s, l] = [served + 1, length + cable];
    if (s > found[0] || (s === found[0] && l < found[1])) found = [s, l];
  }
  return found;
}

const lengths = fc.integer({ min: 1, max: 9 });

describe('R4: stock cables', () => {
  test('serve as many runs as any assignment could, with as little cable', () => {
    fc.assert(
      fc.property(
        fc.array(lengths, { maxLength: 5 }),
        fc.array(lengths, { maxLength: 5 }),
        (needed, cables) => {
          const counts = new Map<number, number>();
          for (const length of cables) counts.set(length, (counts.get(length) ?? 0) + 1);
          const stock = [...counts].map(([length, count]) => ({ length, count }));
          const taken = assignStock(needed, stock).filter((length) => length !== null);
          const total = taken.reduce((sum, length) => sum + length, 0);
          expect([taken.length, total]).toEqual(best(needed, cables));
        },
      ),
    );
  });

  test('are never short and never taken twice', () => {
    const stock = [
      { length: 3000, count: 1 },
      { length: 5000, count: 2 },
    ];
    expect(assignStock([2900, 2800, 4900], stock)).toEqual([3000, 5000, 5000]);
    expect(assignStock([4000, 4100, 4200], stock)).toEqual([null, 5000, 5000]);
    expect(assignStock([100], [])).toEqual([null]);
    expect(assignStock([100], [{ length: 5000, count: 0 }])).toEqual([null]);
  });
});
