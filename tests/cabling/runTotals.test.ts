import { expect, it } from 'vitest';
import type { Run } from '../../src/cabling/run.ts';
import { runTotals } from '../../src/cabling/runTotals.ts';

const run = (total: number, stock: number | null): Run => ({
  mic: 'mic',
  input: 1,
  route: [],
  parts: [],
  total,
  stock,
  through: [],
});

it('adds up all cable, finds the longest and counts the stock, shortest first', () => {
  expect(runTotals([])).toEqual({ cable: 0, longest: 0, stock: [] });
  expect(runTotals([run(4000, 5000), run(9000, null), run(1500, 2000), run(4500, 5000)])).toEqual({
    cable: 19_000,
    longest: 9000,
    stock: [
      { length: 2000, count: 1 },
      { length: 5000, count: 2 },
    ],
  });
});
