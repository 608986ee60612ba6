import type { PatchSettings, PullKind, SpareRule, SpareRules } from '../../layout/patch.ts';

/** Rounding of a percentage must not add a spare: 10 % of 10 is one. */
const ROUNDING = 1e-9;

/** P4 The percentage, rounded up, and at least `least`; none of what is not needed. */
export function sparesFor(needed: number, kind: PullKind, { usual, byKind }: SpareRules): number {
  if (needed === 0) return 0;
  const { percent, least } = byKind[kind] ?? usual;
  return Math.max(0, least, Math.ceil((percent * needed) / 100 - ROUNDING));
}

/** Sets the rule of one kind, of all that have none of their own with null; a rule of null gives a kind back to that of all. Pure. */
export function setSpares(
  patch: PatchSettings,
  kind: PullKind | null,
  rule: SpareRule | null,
): PatchSettings {
  const { usual, byKind } = patch.spares;
  const before = kind === null ? usual : byKind[kind];
  if (rule === null) {
    if (kind === null || before === undefined) return patch;
    const { [kind]: _, ...others } = byKind;
    return { ...patch, spares: { usual, byKind: others } };
  }
  if (before && before.percent === rule.percent && before.least === rule.least) return patch;
  return kind === null
    ? { ...patch, spares: { usual: rule, byKind } }
    : { ...patch, spares: { usual, byKind: { ...byKind, [kind]: rule } } };
}
