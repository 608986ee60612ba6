import type { Layout } from '../layout/layout.ts';
import type { Report } from './report.ts';

/** Analyses layouts, reusing what the last call computed for the parts that did not change. */
export type Analyst = (layout: Layout) => Report;

export function createAnalyst(): Analyst {
  return () => ({
    rig: { pieces: [], mics: [] },
    clearances: [],
    findings: [],
    runs: [],
    totals: { cable: 0, longest: 0, stock: [] },
  });
}
