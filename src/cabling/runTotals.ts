import type { Mm } from '../units/quantity.ts';
import type { Run } from './run.ts';

/** What all runs need together. */
export interface RunTotals {
  /** Length of all runs together. */
  readonly cable: Mm;
  readonly longest: Mm;
  /** How many stock cables of each length the runs take, shortest first. A run that none serves is not in it. */
  readonly stock: readonly { readonly length: Mm; readonly count: number }[];
}

export function runTotals(runs: readonly Run[]): RunTotals {
  const counts = new Map<Mm, number>();
  for (const { stock } of runs) {
    if (stock !== null) counts.set(stock, (counts.get(stock) ?? 0) + 1);
  }
  return {
    cable: runs.reduce((total, run) => total + run.total, 0),
    longest: runs.reduce((longest, run) => Math.max(longest, run.total), 0),
    stock: [...counts]
      .map(([length, count]) => ({ length, count }))
      .sort((a, b) => a.length - b.length),
  };
}
