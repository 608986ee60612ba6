import type { PullKind, SpareRules } from '../../layout/patch.ts';

/** Rounding of a percentage must not add a spare: 10 % of 10 is one. */
const ROUNDING = 1e-9;

/** P4 The percentage, rounded up, and at least `least`; none of what is not needed. */
export function sparesFor(needed: number, kind: PullKind, { usual, byKind }: SpareRules): number {
  if (needed === 0) return 0;
  const { percent, least } = byKind[kind] ?? usual;
  return Math.max(0, least, Math.ceil((percent * needed) / 100 - ROUNDING));
}
