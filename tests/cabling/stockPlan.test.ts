import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FOOT_SIZES,
  METRIC_SIZES,
  planStock,
  type StockPlan,
} from '../../src/cabling/stockPlan.ts';
import type { Stock } from '../../src/layout/cabling.ts';

const needsOf = (lengths: readonly number[]) =>
  lengths.map((total, i) => ({ mic: `mic-${i + 1}`, total }));
const lengths = (most: number): fc.Arbitrary<number[]> =>
  fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: most });
const stockOf = (cables: readonly number[]): Stock =>
  cables.map((length) => ({ length, count: 1 }));
const sizes = [4, 9, 14];

type Cost = readonly [without: number, joins: number, length: number];

const costOf = ({ runs, joins }: StockPlan): Cost => [
  runs.filter(({ carried }) => carried.length === 0).length,
  joins,
  runs.reduce((all, { carried, missing }) => all + sum(carried) + sum(missing), 0),
];
const sum = (all: readonly number[]): number => all.reduce((total, length) => total + length, 0);

/** The best of all plans, every one tried: each run takes any cable, any two, or none. */
function bestByTrying(
  needed: readonly number[],
  cables: readonly number[],
  bring: (needed: number) => number,
): Cost {
  const [first, ...rest] = needed;
  if (first === undefined) return [0, 0, 0];
  const plans: Cost[] = [];
  const add = (taken: readonly number[], [without, joins, length]: Cost): void => {
    const [w, j, l] = bestByTrying(
      rest,
      cables.filter((_, i) => !taken.includes(i)),
      bring,
    );
    plans.push([without + w, joins + j, length + l]);
  };
  for (const [i, cable] of cables.entries()) {
    if (cable >= first) add([i], [0, 0, cable]);
    for (const [j, other] of cables.entries()) {
      if (j > i && cable + other >= first) add([i, j], [0, 1, cable + other]);
    }
  }
  add([], [1, 0, bring(first)]);
  return plans.reduce((p, q) => (compare(q, p) < 0 ? q : p));
}

const compare = (p: Cost, q: Cost): number => p[0] - q[0] || p[1] - q[1] || p[2] - q[2];

describe('the stock plan', () => {
  it('S1: is as good as the best of all plans', () => {
    fc.assert(
      fc.property(lengths(4), lengths(6), (needed, cables) => {
        const plan = planStock(needsOf(needed), stockOf(cables), sizes);
        const shortest = (of: readonly number[], least: number): number =>
          Math.min(...of.filter((size) => size >= least));
        const bring = (least: number): number => {
          const [listed, usual] = [shortest(cables, least), shortest(sizes, least)];
          return listed <= 2 * usual ? listed : usual;
        };
        expect(plan.isBest).toBe(true);
        expect(costOf(plan)).toEqual(bestByTrying(needed, cables, bring));
      }),
      { numRuns: 600 },
    );
  });

  it('S1: leaves no run short, uses no cable twice, and adds up', () => {
    fc.assert(
      fc.property(lengths(12), lengths(20), (needed, cables) => {
        const { runs, missing, waste } = planStock(needsOf(needed), stockOf(cables), sizes);
        const used = runs.flatMap(({ carried }) => carried);
        for (const length of new Set(used)) {
          const count = (all: readonly number[]) => all.filter((one) => one === length).length;
          expect(count(used)).toBeLessThanOrEqual(count(cables));
        }
        for (const [i, run] of runs.entries()) {
          expect(run.needed).toBe(needed[i]);
          expect(run.waste).toBe(sum(run.carried) + sum(run.missing) - run.needed);
          expect(run.waste).toBeGreaterThanOrEqual(0);
          expect(run.carried.length === 0).toBe(run.missing.length > 0);
        }
        expect(waste).toBe(sum(runs.map((run) => run.waste)));
        const brought = missing.flatMap(({ length, count }) => Array<number>(count).fill(length));
        const short = runs.flatMap((run) => run.missing).sort((a, b) => a - b);
        expect(brought).toEqual(short);
      }),
    );
  });

  it('S3, S4: each run takes the shortest that the longer ones leave; where none reaches, the longer of a join the shortest for the rest', () => {
    let joined = 0;
    fc.assert(
      fc.property(lengths(8), lengths(12), (needed, cables) => {
        const { runs } = planStock(needsOf(needed), stockOf(cables), sizes);
        const left = cables.toSorted((a, b) => a - b);
        const take = (length: number) => left.splice(left.indexOf(length), 1);
        for (const run of runs.toSorted((p, q) => q.needed - p.needed)) {
          const single = left.find((length) => length >= run.needed);
          const [longer, shorter] = run.carried;
          if (single !== undefined) expect(run.carried).toEqual([single]);
          for (const length of run.carried) expect(left).toContain(length);
          if (longer !== undefined) take(longer);
          if (shorter === undefined || longer === undefined) continue;
          joined += 1;
          expect(shorter).toBeLessThanOrEqual(longer);
          expect(shorter).toBe(left.find((length) => length >= run.needed - longer));
          take(shorter);
        }
      }),
      { numRuns: 400 },
    );
    expect(joined).toBeGreaterThan(20);
  });

  it('says what is missing: two more of 5 m', () => {
    const stock = [
      { length: 3000, count: 2 },
      { length: 5000, count: 1 },
    ];
    const { missing } = planStock(needsOf([4800, 4700, 4600, 2000, 2900]), stock);
    expect(missing).toEqual([{ length: 5000, count: 2 }]);
  });

  it('joins two only where that avoids a missing one', () => {
    const stock = [
      { length: 3000, count: 4 },
      { length: 5000, count: 1 },
    ];
    const plan = planStock(needsOf([4800, 4700, 2500]), stock);
    expect(plan.runs.map(({ carried }) => carried)).toEqual([[5000], [3000, 3000], [3000]]);
    expect([plan.joins, plan.missing]).toEqual([1, []]);
    // A join that takes the only cable of another run would only move what is missing.
    const moved = planStock(needsOf([4800, 2500, 2500]), [{ length: 3000, count: 2 }]);
    expect(moved.joins).toBe(0);
    expect(moved.missing).toEqual([{ length: 5000, count: 1 }]);
  });

  it('S2: what is too long for any size takes as many of the longest as it needs and no more', () => {
    const missing = (needed: number) => planStock(needsOf([needed]), [], sizes).runs[0]?.missing;
    expect([14, 28, 42].map(missing)).toEqual([[14], [14, 14], [14, 14, 14]]);
    expect([15, 29, 18, 19].map(missing)).toEqual([
      [14, 4],
      [14, 14, 4],
      [14, 4],
      [14, 9],
    ]);
  });

  it('S2: brings a length of the list, unless a usual one is less than half as long', () => {
    const missing = (needed: number, ...listed: readonly number[]) => {
      const stock = listed.map((length) => ({ length, count: 0 }));
      return planStock(needsOf([needed]), stock).runs[0]?.missing;
    };
    expect(missing(5600, 5000, 10_000)).toEqual([10_000]);
    expect(missing(4400, 3000, 15_000)).toEqual([5000]);
    expect(missing(4400)).toEqual([5000]);
    expect(missing(7000, 4000)).toEqual([7500]);
  });

  it('S2: brings more than one cable where no size is long enough', () => {
    const { runs } = planStock(needsOf([47_000]), []);
    expect(runs[0]?.missing).toEqual([20_000, 20_000, 7500]);
  });

  it('takes a stock of none and of ten thousand, of one length or of as many', () => {
    const needed = Array.from({ length: 64 }, (_, i) => 2000 + 130 * i);
    const none = planStock(needsOf(needed), []);
    expect(none.missing.reduce((all, { count }) => all + count, 0)).toBe(64);
    const many = planStock(needsOf(needed), [{ length: 15_000, count: 10_000 }]);
    expect([many.missing, many.joins]).toEqual([[], 0]);
    const all = Array.from({ length: 10_000 }, (_, i) => ({ length: 300 + i, count: 1 }));
    const each = planStock(needsOf(needed), all);
    expect([each.missing, each.joins]).toEqual([[], 0]);
    const short = Array.from({ length: 10_000 }, (_, i) => ({ length: 300 + i / 10, count: 1 }));
    const joined = planStock(needsOf(needed), short);
    expect(joined.runs.every(({ waste }) => waste >= 0)).toBe(true);
    expect(planStock([], all)).toEqual({ runs: [], missing: [], joins: 0, waste: 0, isBest: true });
  });

  it('S5: finds the best plan for 16 runs and a case of short cables without trying everything', () => {
    const needed = Array.from({ length: 16 }, (_, i) => 3300 + 200 * i);
    const stock = [
      { length: 2000, count: 9 },
      { length: 3000, count: 9 },
      { length: 5000, count: 3 },
    ];
    const { isBest, joins, missing } = planStock(needsOf(needed), stock);
    expect(isBest).toBe(true);
    // Three of 5 m alone, nine joins of the 18 others; the four that are left are brought.
    expect(joins).toBe(9);
    expect(missing.reduce((all, { count }) => all + count, 0)).toBe(4);
  });

  it('knows the usual sizes', () => {
    expect(METRIC_SIZES).toEqual([...METRIC_SIZES].sort((a, b) => a - b));
    expect(FOOT_SIZES.map((size) => Math.round(size) / 1000)).toEqual([
      0.914, 1.524, 1.829, 3.048, 4.572, 6.096, 7.62, 9.144, 15.24, 30.48,
    ]);
  });
});
