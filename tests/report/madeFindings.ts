import type { ClearanceRow, Finding } from '../../src/report/report.ts';

/** A clearance that says nothing of what is nearest. */
export const rowOf = (
  mic: string,
  clearance: number,
  verdict: ClearanceRow['verdict'],
): ClearanceRow => ({ mic, clearance, verdict, nearest: undefined });

/** A finding without a place. */
export const findingOf = (
  code: Finding['code'],
  severity: Finding['severity'],
  about: readonly string[],
  numbers: Finding['numbers'] = {},
): Finding => ({
  key: `${code}:${about.join('+')}`,
  ...{ code, severity, about, numbers },
  place: undefined,
});
