import { expect, it } from 'vitest';
import { runTotals } from '../../src/cabling/runTotals.ts';

const run = (total: number, extra: number, carried: readonly number[]) => ({
  total,
  extra,
  carried,
});

it('adds up all cable, finds the longest and counts the stock, joined ones each, shortest first', () => {
  expect(runTotals([])).toEqual({ cable: 0, longest: 0, extra: 0, stock: [] });
  const runs = [
    run(4000, 200, [5000]),
    run(9000, 0, []),
    run(1500, 10, [2000]),
    run(6500, 90, [5000, 2000]),
  ];
  expect(runTotals(runs)).toEqual({
    cable: 21_000,
    longest: 9000,
    extra: 300,
    stock: [
      { length: 2000, count: 2 },
      { length: 5000, count: 2 },
    ],
  });
});
