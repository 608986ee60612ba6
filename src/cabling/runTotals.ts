import type { Mm } from '../units/quantity.ts';
import { type CableCount, counted } from './cableCount.ts';
import type { CableRun } from './cables.ts';

/** What all runs need together. */
export interface RunTotals {
  /** Length of all runs together. */
  readonly cable: Mm;
  readonly longest: Mm;
  /** How much of it the loom adds. */
  readonly extra: Mm;
  /** How many of the stock cables carried the runs take, joined ones counted each, shortest first. */
  readonly stock: readonly CableCount[];
}

export const runTotals = (
  runs: readonly Pick<CableRun, 'total' | 'extra' | 'carried'>[],
): RunTotals => ({
  cable: runs.reduce((sum, { total }) => sum + total, 0),
  longest: runs.reduce((longest, { total }) => Math.max(longest, total), 0),
  extra: runs.reduce((sum, { extra }) => sum + extra, 0),
  stock: counted(runs.flatMap(({ carried }) => carried)),
});
