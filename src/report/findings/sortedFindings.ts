import type { Finding, Severity } from '../report.ts';

const RANK: { readonly [Level in Severity]: number } = { stop: 0, warn: 1, note: 2 };

/** The numbers that say how bad a finding is, the more the worse; a finding carries one of them at most. */
const SIZES = ['beyond', 'depth', 'overlap', 'away', 'distance', 'length', 'drop'] as const;

/**
 * F1 Worst first: by severity; mics that are struck or tight before anything else of theirs, the nearest first; the rest kind by kind
 *    in the order given, each kind by its size, which is compared in whole units so that no rounding turns an order round.
 */
export function sortedFindings(findings: readonly Finding[]): readonly Finding[] {
  const kinds = new Map<string, number>();
  for (const { code } of findings) if (!kinds.has(code)) kinds.set(code, kinds.size);
  const kindOf = ({ code, numbers }: Finding): number =>
    numbers['clearance'] === undefined ? (kinds.get(code) ?? 0) : -1;
  return findings.toSorted(
    (a, b) =>
      RANK[a.severity] - RANK[b.severity] || kindOf(a) - kindOf(b) || badness(b) - badness(a),
  );
}

/** How bad a finding is among its kind; a stand is the worse, the smaller its tipping factor, a mic by the player the smaller the gap. */
function badness({ numbers }: Finding): number {
  if (numbers['clearance'] !== undefined) return -numbers['clearance'];
  if (numbers['factor'] !== undefined) return -numbers['factor'];
  if (numbers['gap'] !== undefined) return -Math.round(numbers['gap']);
  const size = SIZES.find((name) => numbers[name] !== undefined);
  return size === undefined ? 0 : Math.round(numbers[size] ?? 0);
}
