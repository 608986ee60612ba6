import type { Vec3 } from '../geometry/vector.ts';
import type { Struck } from '../layout/pieces/piece.ts';
import type { Hands } from '../layout/pieces/struck.ts';
import type { Player } from '../layout/player.ts';

/** A hand or foot of the player. */
export type Side = 'right' | 'left';

/** +1 for the right, -1 for the left. */
export type SideSign = 1 | -1;
export const signOf = (side: Side): SideSign => (side === 'right' ? 1 : -1);

/**
 * Hand space: the kit frame with x turned round for the left hand, so that both arms are computed as right arms. A mirrored
 * kit with the lead hand swapped then runs through the very same arithmetic and gives exactly mirrored results.
 */
export const mirrored = (p: Vec3, sign: SideSign): Vec3 =>
  sign === 1 ? p : { x: -p.x, y: p.y, z: p.z };

/** Rule H1: the hands a piece is given to play it; `lead` is the lead hand, whichever that is. */
export function plays(side: Side, hands: Hands, leadHand: Player['leadHand']): boolean {
  if (hands === 'lead') return side === leadHand;
  return hands === 'both' || hands === side;
}

/**
 * Rule H2: a hi-hat given to both hands is played the player's way: by either hand; crossed by the lead hand alone, wherever it stands; or
 * open by the hand on its own side alone (straight before the player by the one that does not lead), so that no arm lies over the
 * other. A hi-hat given to one hand, and every other piece, follows rule H1. `x` is in the kit frame.
 */
export function playsPiece(
  side: Side,
  { kind, hands, x }: Pick<Struck, 'kind' | 'hands' | 'x'>,
  { leadHand, hiHat }: Pick<Player, 'leadHand' | 'hiHat'>,
): boolean {
  if (kind !== 'hiHat' || hands !== 'both' || hiHat === 'either') {
    return plays(side, hands, leadHand);
  }
  const leads = side === leadHand;
  if (hiHat === 'crossed') return leads;
  return x === 0 ? !leads : (side === 'right') === x > 0;
}
