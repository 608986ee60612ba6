import type { AgainstPlayer } from '../clearance/againstPlayer.ts';
import type { Standing } from '../rig/standing/standing.ts';

type Wrong = Pick<Standing | AgainstPlayer, 'code' | 'about' | 'overlap'>;

/** Smaller growths of an overlap are rounding. */
const SAME = 1e-6;

/** Whether nothing that is wrong with a thing got worse by a change, and nothing new is wrong. */
export function isNoWorse(before: readonly Wrong[], after: readonly Wrong[]): boolean {
  const known = new Map(before.map((found) => [keyOf(found), found.overlap]));
  return after.every((found) => found.overlap <= (known.get(keyOf(found)) ?? -1) + SAME);
}

const keyOf = ({ code, about }: Wrong): string => `${code} ${about.join(' ')}`;
