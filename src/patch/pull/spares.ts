import type { Percent } from '../../units/quantity.ts';
import type { PullKind } from './pullItem.ts';

/** How many spares are taken of what is needed. */
export interface SpareRule {
  readonly percent: Percent;
  /** At least so many of each sort. */
  readonly least: number;
}

/** One rule for all kinds, and others for some. */
export interface SpareRules {
  readonly usual: SpareRule;
  readonly byKind: Readonly<Partial<Record<PullKind, SpareRule>>>;
}

const NO_SPARES: SpareRule = { percent: 0, least: 0 };

/** A tenth, at least one of each; one box, one tail and the sandbags do without (common practice, no source). */
export const DEFAULT_SPARES: SpareRules = {
  usual: { percent: 10, least: 1 },
  byKind: { box: NO_SPARES, tail: NO_SPARES, sandbag: NO_SPARES },
};

/** Rounding of a percentage must not add a spare: 10 % of 10 is one. */
const ROUNDING = 1e-9;

/** P4 The percentage, rounded up, and at least `least`; none of what is not needed. */
export function sparesFor(needed: number, kind: PullKind, { usual, byKind }: SpareRules): number {
  if (needed === 0) return 0;
  const { percent, least } = byKind[kind] ?? usual;
  return Math.max(0, least, Math.ceil((percent * needed) / 100 - ROUNDING));
}
