import { remembered } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Finding, Report } from './report.ts';

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
