import { remembered } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Finding, Report } from './report.ts';

/**
 * Mics that stand in a drum or cymbal with nothing moving, each with the first finding that says so. Whatever room what moves leaves
 * them, they can't stay: nobody should read 'clear' of them.
 */
export const standingIn = remembered(
  ({ findings }: Pick<Report, 'findings'>): ReadonlyMap<Id, Finding> => {
    const found = new Map<Id, Finding>();
    for (const finding of findings) {
      const mic = finding.about[0];
      const isIn = finding.code === 'mic-in-shell' || finding.code === 'boom-through-piece';
      if (isIn && mic !== undefined && !found.has(mic)) found.set(mic, finding);
    }
    return found;
  },
);
