import type { Stock } from '../layout/cabling.ts';
import type { Mm } from '../units/quantity.ts';

/** Cables that are left, by length. */
export interface Pool {
  /** The shortest left that is at least so long. */
  shortestFrom(least: Mm): Mm | undefined;
  /** For every length left: it and the shortest that reaches with it and is no longer than it. */
  pairsFrom(least: Mm): [longer: Mm, shorter: Mm][];
  /** How many are left. */
  size(): number;
  take(length: Mm): void;
  giveBack(length: Mm): void;
}

export function createPool(stock: Stock): Pool {
  const counts = new Map<Mm, number>();
  for (const { length, count } of stock) {
    if (count > 0) counts.set(length, (counts.get(length) ?? 0) + count);
  }
  const lengths = [...counts.keys()].sort((a, b) => a - b);
  const left = (length: Mm): number => counts.get(length) ?? 0;
  let size = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const change = (length: Mm, by: number): void => {
    counts.set(length, left(length) + by);
    size += by;
  };
  return {
    shortestFrom(least) {
      for (let i = firstFrom(lengths, least); i < lengths.length; i += 1) {
        const length = lengths[i];
        if (length !== undefined && left(length) > 0) return length;
      }
      return undefined;
    },
    pairsFrom(least) {
      const pairs: [Mm, Mm][] = [];
      let shortest = lengths.length;
      // The longer the one, the shorter the other may be.
      for (const longer of lengths) {
        if (left(longer) === 0) continue;
        while (shortest > 0 && (lengths[shortest - 1] ?? 0) >= least - longer) shortest -= 1;
        const shorter = nextLeft(shortest, longer);
        if (shorter !== undefined) pairs.push([longer, shorter]);
      }
      return pairs;
    },
    size: () => size,
    take: (length) => change(length, -1),
    giveBack: (length) => change(length, 1),
  };

  function nextLeft(from: number, longer: Mm): Mm | undefined {
    for (let i = from; i < lengths.length; i += 1) {
      const length = lengths[i];
      if (length === undefined || length > longer) return undefined;
      if (left(length) > (length === longer ? 1 : 0)) return length;
    }
    return undefined;
  }
}

/** The place of the first of sorted lengths that is at least so long. */
function firstFrom(lengths: readonly Mm[], least: Mm): number {
  let low = 0;
  let high = lengths.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lengths[middle] ?? 0) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
