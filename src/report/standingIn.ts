import { remembered } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Finding, Report } from './report.ts';

/** What says that a mic stands in something: a drum or cymbal, its stand or pedal, the player at rest, the way of a foot or beater. */
const STANDS_IN: ReadonlySet<Finding['code']> = new Set([
  'mic-in-shell',
  'boom-through-piece',
  'mic-against-stand',
  'mic-in-player',
  'mic-in-pedal',
]);

/** The mic that a finding says stands in a drum, a cymbal, their hardware or the player with nothing moving; undefined for any other finding. */
export const micStandingIn = ({ code, about }: Pick<Finding, 'code' | 'about'>): Id | undefined =>
  STANDS_IN.has(code) ? about[0] : undefined;

/**
 * Mics that stand in a drum, a cymbal, their hardware or the player with nothing moving, each with the first finding that says so. Whatever room what
 * moves leaves them, they can't stay.
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
