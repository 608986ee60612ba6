import { createClearances } from '../clearance/clearances.ts';
import type { Layout } from '../layout/layout.ts';
import { createRigBuilder } from '../rig/buildRig.ts';
import { clearanceFindings } from './findings/clearanceFindings.ts';
import { reachFindings } from './findings/reachFindings.ts';
import { sortedFindings } from './findings/sortedFindings.ts';
import { standFindings } from './findings/standFindings.ts';
import type { Report } from './report.ts';

/** Analyses layouts, reusing what the last call computed for the parts that did not change. */
export type Analyst = (layout: Layout) => Report;

/** An analyst with a memory of its own. Same layout, same report; the memory only saves time. */
export function createAnalyst(): Analyst {
  const rigOf = createRigBuilder();
  const clearancesOf = createClearances();
  return (layout) => {
    const rig = rigOf(layout);
    const clearances = clearancesOf(layout, rig.mics);
    const findings = sortedFindings([
      ...clearanceFindings(clearances),
      ...standFindings(rig.mics),
      ...reachFindings(layout),
    ]);
    return {
      rig,
      clearances,
      findings,
      runs: [],
      totals: { cable: 0, longest: 0, stock: [] },
    };
  };
}
