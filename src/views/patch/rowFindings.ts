import type { Id } from '../../layout/fields.ts';
import type { Finding, FindingCode } from '../../report/report.ts';

/** What the cable room says of plugs; all else about a row is the patch's own. */
const OF_PLUGS: readonly FindingCode[] = ['run-unplugged', 'input-twice', 'input-beyond-box'];
const OF_ROWS: readonly FindingCode[] = [
  'phantom-missing',
  'ribbon-with-phantom',
  'phantom-not-needed',
  'input-two-channels',
  'channel-twice',
  'mic-split-twice',
];

/** Whether a finding is about the row of a mic in the input list: its plug, its 48 V, its channel, its split. */
export const isAboutRow =
  (mic: Id) =>
  ({ code, about }: Pick<Finding, 'code' | 'about'>): boolean =>
    about.includes(mic) &&
    (OF_PLUGS.includes(code) || OF_ROWS.includes(code) || code.startsWith('split-'));

const WORST = ['stop', 'warn', 'note'] as const;

/** How bad the worst of some findings is; null for none. */
export const worstOf = (
  findings: readonly Pick<Finding, 'severity'>[],
): Finding['severity'] | null =>
  WORST.find((one) => findings.some(({ severity }) => severity === one)) ?? null;
