import type { Finding, Severity } from '../report.ts';

const RANK: { readonly [Level in Severity]: number } = { stop: 0, warn: 1, note: 2 };

/** Worst first: by severity, then by clearance (the nearest first), then in the order given. */
export const sortedFindings = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted(
    (a, b) =>
      RANK[a.severity] - RANK[b.severity] ||
      (a.numbers['clearance'] ?? 0) - (b.numbers['clearance'] ?? 0),
  );
