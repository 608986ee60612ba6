import { type InTheWay, inTheWayKey } from '../clearance/againstPlayer.ts';

type Wrong = Pick<InTheWay, 'code' | 'about' | 'overlap'>;

/** Smaller growths of an overlap are rounding. */
const SAME = 1e-6;

/** Whether nothing that is wrong with a thing got worse by a change, and nothing new is wrong. */
export function isNoWorse(before: readonly Wrong[], after: readonly Wrong[]): boolean {
  const known = new Map(before.map((found) => [inTheWayKey(found), found.overlap]));
  return after.every((found) => found.overlap <= (known.get(inTheWayKey(found)) ?? -1) + SAME);
}
