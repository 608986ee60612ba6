import { listed } from '../geometry/listed.ts';
import type { Stock } from '../layout/cabling.ts';
import type { Id } from '../layout/fields.ts';
import { MM_PER_FOOT } from '../units/inch.ts';
import type { Mm } from '../units/quantity.ts';
import { type CableCount, counted } from './cableCount.ts';
import { createPool, type Pool } from './stockPool.ts';

/** Usual lengths of mic cables, in metres and in feet (common practice, from memory). */
export const METRIC_SIZES: readonly Mm[] = [
  1000, 1500, 2000, 3000, 5000, 6000, 7500, 9000, 10_000, 15_000, 20_000,
];
export const FOOT_SIZES: readonly Mm[] = [3, 5, 6, 10, 15, 20, 25, 30, 50, 100].map(
  (feet) => feet * MM_PER_FOOT,
);

/** A cable that must reach over a length. */
export interface StockNeed {
  readonly mic: Id;
  readonly total: Mm;
}

/** What serves one run. */
export interface ServedRun {
  readonly mic: Id;
  readonly needed: Mm;
  /** From those carried: one cable, or two that are joined, the longer first; none where none is left that would do. */
  readonly carried: readonly Mm[];
  /** Else what has to be brought: one cable, or more that are joined where no size is long enough. */
  readonly missing: readonly Mm[];
  /** What is too much. */
  readonly waste: Mm;
}

export interface StockPlan {
  /** In the order of the needs. */
  readonly runs: readonly ServedRun[];
  /** What has to be brought in all, shortest first. */
  readonly missing: readonly CableCount[];
  /** Runs of two carried cables. */
  readonly joins: number;
  readonly waste: Mm;
  /** False when there were too many ways of joining to try them all: the plan serves, but a better one may exist. */
  readonly isBest: boolean;
}

/** How many steps of a search are taken before the best plan so far has to do: a few ms. */
const MOST_STEPS = 4000;

/**
 * Which cables serve which runs.
 *
 * S1 No run is short. As few runs as possible are without a carried cable; then as few as possible are joined from two; then as
 *    little cable as possible is too much, that of the missing ones counted.
 * S2 A run without takes the shortest length of the stock list that would reach, carried or not, so that cases stay uniform; but where
 *    that is more than twice the shortest of `sizes` that would, this one. Where nothing is long enough, as many of the longest as
 *    it needs and the shortest that makes up the rest.
 * S3 The runs are served from the longest down, each by the shortest cable left that reaches. That is best: say the best plan
 *    gives this run something else. Then whoever has its cable, a run no longer, can have that instead: it is long enough.
 *    Swapped, the plan is as good, and this run has its cable.
 * S4 Where no cable left reaches, this run is the one to be joined or to go without: a longer one that is served could
 *    swap with it, which never costs more. To each longer part of a join belongs the shortest that makes up the rest, by the same
 *    swap. So only these joins, and going without, have to be tried; all of them are.
 * S5 A run is not left without in order to join for a shorter one what would reach for it too: swapped, what has to be brought is no
 *    longer.
 */
export function planStock(
  needs: readonly StockNeed[],
  stock: Stock,
  sizes: readonly Mm[] = METRIC_SIZES,
): StockPlan {
  const longestFirst = [...needs.keys()].sort((i, j) => lengthOf(needs, j) - lengthOf(needs, i));
  const search = new Search(
    listed(longestFirst, (i) => lengthOf(needs, i)),
    stock,
    sizesToBring(stock, sizes),
  );
  const served = search.run();
  const byNeed = new Map(longestFirst.map((need, rank) => [need, served[rank]]));
  const runs = listed(needs, ({ mic, total }, i): ServedRun => {
    const { carried, missing } = byNeed.get(i) ?? NOTHING;
    return { mic, needed: total, carried, missing, waste: sum(carried) + sum(missing) - total };
  });
  return {
    runs,
    missing: counted(runs.flatMap(({ missing }) => missing)),
    joins: runs.filter(({ carried }) => carried.length === 2).length,
    waste: sum(listed(runs, ({ waste }) => waste)),
    isBest: search.isComplete,
  };
}

const lengthOf = (needs: readonly StockNeed[], i: number): Mm => needs[i]?.total ?? 0;
const sum = (lengths: readonly Mm[]): Mm => lengths.reduce((total, length) => total + length, 0);

/** S2: lengths to choose from, each shortest first. */
interface Sizes {
  readonly listed: readonly Mm[];
  readonly usual: readonly Mm[];
}

function sizesToBring(stock: Stock, sizes: readonly Mm[]): Sizes {
  const inOrder = (lengths: readonly Mm[]): readonly Mm[] =>
    [...new Set(lengths)].filter((length) => length > 0).sort((a, b) => a - b);
  return { listed: inOrder(listed(stock, ({ length }) => length)), usual: inOrder(sizes) };
}

/** S2: how much longer than a usual size a listed one may be. */
const MOST_OVER = 2;

function oneThatReaches(needed: Mm, { listed, usual }: Sizes): Mm | undefined {
  const own = listed.find((length) => length >= needed);
  const other = usual.find((length) => length >= needed);
  if (own === undefined || other === undefined) return own ?? other;
  return own <= MOST_OVER * other ? own : other;
}

/** S2: what has to be brought for a length, longest first; nothing where there is no size at all. */
function toBring(needed: Mm, sizes: Sizes): readonly Mm[] {
  const longest = Math.max(sizes.listed.at(-1) ?? 0, sizes.usual.at(-1) ?? 0);
  if (longest === 0) return [];
  const whole = Math.max(0, Math.ceil(needed / longest) - 1);
  const last = oneThatReaches(needed - whole * longest, sizes) ?? longest;
  return [...Array.from({ length: whole }, () => longest), last];
}

interface Served {
  readonly carried: readonly Mm[];
  readonly missing: readonly Mm[];
}

const NOTHING: Served = { carried: [], missing: [] };

/** What is made least, the first before the second before the third (S1). */
interface Cost {
  readonly without: number;
  readonly joins: number;
  readonly length: Mm;
}

const isLess = (p: Cost, q: Cost): boolean =>
  p.without !== q.without
    ? p.without < q.without
    : p.joins !== q.joins
      ? p.joins < q.joins
      : p.length < q.length;

class Search {
  readonly #needed: readonly Mm[];
  readonly #stock: Stock;
  readonly #pool: Pool;
  readonly #sizes: Sizes;
  /** The least that all runs from each one on can take; where the first plan is the only one, it is never asked for. */
  #toCome: readonly Mm[] | undefined;
  readonly #served: Served[] = [];
  #best: readonly Served[] | undefined;
  #bestCost: Cost = { without: Number.POSITIVE_INFINITY, joins: 0, length: 0 };
  #steps = 0;

  constructor(needed: readonly Mm[], stock: Stock, sizes: Sizes) {
    this.#needed = needed;
    this.#stock = stock;
    this.#pool = createPool(stock);
    this.#sizes = sizes;
  }

  get isComplete(): boolean {
    return this.#steps <= MOST_STEPS;
  }

  run(): readonly Served[] {
    this.#serve(0, { without: 0, joins: 0, length: 0 }, Number.POSITIVE_INFINITY);
    return this.#best ?? [];
  }

  /** `below`: how long a join may be, so that none of the runs that went without could have had it (S5). */
  #serve(rank: number, cost: Cost, below: Mm): void {
    const needed = this.#needed[rank];
    this.#steps += 1;
    if (this.#best && !isLess(this.#leastFrom(rank, cost), this.#bestCost)) return;
    if (needed === undefined) {
      this.#best = [...this.#served];
      this.#bestCost = cost;
      return;
    }
    const single = this.#pool.shortestFrom(needed);
    if (single !== undefined) {
      this.#with([single], rank, { cost: { ...cost, length: cost.length + single }, below });
      return;
    }
    for (const pair of this.#pairsFor(needed, below)) {
      const length = cost.length + sum(pair);
      this.#with(pair, rank, { cost: { ...cost, joins: cost.joins + 1, length }, below });
      if (this.#best && !this.isComplete) return;
    }
    const missing = toBring(needed, this.#sizes);
    this.#served.push({ carried: [], missing });
    const without = cost.without + 1;
    const length = cost.length + sum(missing);
    this.#serve(rank + 1, { ...cost, without, length }, Math.min(below, needed));
    this.#served.pop();
  }

  #with(
    carried: readonly Mm[],
    rank: number,
    { cost, below }: { readonly cost: Cost; readonly below: Mm },
  ): void {
    for (const length of carried) this.#pool.take(length);
    this.#served.push({ carried, missing: [] });
    this.#serve(rank + 1, cost, below);
    this.#served.pop();
    for (const length of carried) this.#pool.giveBack(length);
  }

  /** S4, the least cable first. */
  #pairsFor(needed: Mm, below: Mm): readonly (readonly Mm[])[] {
    return this.#pool
      .pairsFrom(needed)
      .filter((pair) => sum(pair) < below)
      .sort((p, q) => sum(p) - sum(q));
  }

  /** What a plan costs at least that has come so far: every run takes one cable at least, and no less than it can. */
  #leastFrom(rank: number, { without, joins, length }: Cost): Cost {
    const left = this.#needed.length - rank;
    const short = Math.max(0, left - this.#pool.size());
    this.#toCome ??= this.#leastToCome();
    return { without: without + short, joins, length: length + (this.#toCome[left - 1] ?? 0) };
  }

  #leastToCome(): readonly Mm[] {
    const whole = createPool(this.#stock);
    let rest = 0;
    return this.#needed.toReversed().map((length) => {
      rest += this.#leastFor(length, whole);
      return rest;
    });
  }

  /** The least length that serves a run, whatever the others take. */
  #leastFor(needed: Mm, pool: Pool): Mm {
    const pairs = pool.pairsFrom(needed).map(sum);
    const single = pool.shortestFrom(needed) ?? Number.POSITIVE_INFINITY;
    return Math.min(single, sum(toBring(needed, this.#sizes)), ...pairs);
  }
}
