import type { Id } from '../layout/fields.ts';
import type { Finding, Report } from './report.ts';

/** What says that a mic stands in something that is no mic: a drum or cymbal, its stand or pedal, the player at rest, the way of a foot or beater. */
const STANDS_IN: ReadonlySet<Finding['code']> = new Set([
  'mic-in-shell',
  'boom-through-piece',
  'mic-against-stand',
  'mic-in-player',
  'mic-in-pedal',
]);

/** Whether a finding says that two mics meet. */
export const isBetweenMics = ({ code }: Pick<Finding, 'code'>): boolean =>
  code === 'mic-against-mic';

/** The mics that a finding says stand in something with nothing moving: in a drum, a cymbal, their hardware or the player, or two in each other. */
export function micsStandingIn(finding: Pick<Finding, 'code' | 'about'>): readonly Id[] {
  if (isBetweenMics(finding)) return finding.about;
  return STANDS_IN.has(finding.code) ? finding.about.slice(0, 1) : [];
}

/** What is found but where mics meet. */
export const withoutMeetings = ({
  findings,
}: Pick<Report, 'findings'>): Pick<Report, 'findings'> => ({
  findings: findings.filter((finding) => !isBetweenMics(finding)),
});
