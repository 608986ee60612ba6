import type { Mm } from '../units/quantity.ts';

/** How many cables of one length. */
export interface CableCount {
  readonly length: Mm;
  readonly count: number;
}

/** How many there are of each length, shortest first. */
export function counted(lengths: readonly Mm[]): readonly CableCount[] {
  const counts = new Map<Mm, number>();
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts]
    .map(([length, count]) => ({ length, count }))
    .sort((a, b) => a.length - b.length);
}
