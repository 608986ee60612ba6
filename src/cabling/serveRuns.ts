import type { Stock } from '../layout/cabling.ts';
import { assignStock } from './assignStock.ts';
import type { Run } from './run.ts';

/** R4 The runs with the stock cables that are left for them. A run whose cable stays is the same object. */
export function serveRuns(runs: readonly Run[], stock: Stock): readonly Run[] {
  const cables = assignStock(
    runs.map(({ total }) => total),
    stock,
  );
  return runs.map((run, i) => {
    const cable = cables[i] ?? null;
    return cable === run.stock ? run : { ...run, stock: cable };
  });
}
