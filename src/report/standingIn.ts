import { remembered } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { ClearanceRow, Finding, Report } from './report.ts';

/** The mic that a finding says stands in a drum or cymbal with nothing moving; undefined for any other finding. */
export const micStandingIn = ({ code, about }: Finding): Id | undefined =>
  code === 'mic-in-shell' || code === 'boom-through-piece' ? about[0] : undefined;

/**
 * Mics that stand in a drum or cymbal with nothing moving, each with the first finding that says so. Whatever room what moves leaves
 * them, they can't stay: nobody should read 'clear' of them.
 */
export const standingIn = remembered(
  ({ findings }: Pick<Report, 'findings'>): ReadonlyMap<Id, Finding> => {
    const found = new Map<Id, Finding>();
    for (const finding of findings) {
      const mic = micStandingIn(finding);
      if (mic !== undefined && !found.has(mic)) found.set(mic, finding);
    }
    return found;
  },
);

/** What a report's mics are judged by. */
export type Judging = Pick<Report, 'clearances' | 'findings'>;

/** A mic's verdict as it is shown: whatever room it has from what moves, one that stands in a drum or cymbal is never clear or tight. */
export const shownVerdict = (
  { mic, verdict }: Pick<ClearanceRow, 'mic' | 'verdict'>,
  report: Pick<Report, 'findings'>,
): ClearanceRow['verdict'] => (standingIn(report).has(mic) ? 'struck' : verdict);

/** How many mics are shown with each verdict. */
export function verdictCounts(report: Judging): Readonly<Record<ClearanceRow['verdict'], number>> {
  const counts = { clear: 0, tight: 0, struck: 0 };
  for (const row of report.clearances) counts[shownVerdict(row, report)] += 1;
  return counts;
}
