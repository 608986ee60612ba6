import type { AgainstPlayer } from '../../clearance/againstPlayer.ts';
import type { MicClearance } from '../../clearance/nearest.ts';
import type { Standing } from '../../rig/standing/standing.ts';

/**
 * S5 What stands in a foot, a beater or its axle is told once with its pedal: not as standing against that pedal's board too, and not as struck by the shin
 *    over that foot, unless the shin reaches deeper. What else is wrong with it is told apart.
 */
export const boardIsTold = (
  { code, about }: Pick<Standing, 'code' | 'about'>,
  found: readonly Pick<AgainstPlayer, 'code' | 'about'>[],
): boolean =>
  code === 'mic-against-stand' &&
  found.some(
    (one) => one.code === 'mic-in-pedal' && one.about[0] === about[0] && one.about[1] === about[1],
  );

/** S5 for what is struck by the shin. */
export const shinIsTold = (
  { mic, clearance, nearest }: Pick<MicClearance, 'mic' | 'clearance' | 'nearest'>,
  found: readonly Pick<AgainstPlayer, 'about' | 'part' | 'overlap'>[],
): boolean => {
  if (nearest?.part !== 'shin' || nearest.movement.kind !== 'leg') return false;
  const { pedal } = nearest.movement;
  return found.some(
    ({ about, part, overlap }) =>
      part === 'foot' && about[0] === mic && (about[1] ?? null) === pedal && overlap >= -clearance,
  );
};
