import type { Mount } from '../../layout/mics/mount.ts';
import type { TurnAway } from '../../report/turnAway.ts';
import type { Nearest } from './movementWords.ts';

type Held = Mount['kind'];

/**
 * What gets a mic out of the way of what moves, by what holds it, what moves and which part of it is met; of a clip the turn that is known to
 * give it more room.
 */
export function moveAwayNext(
  held: Held | undefined,
  nearest: Nearest | undefined,
  turn: TurnAway | null = null,
): string {
  const { movement, micPart } = nearest ?? {};
  switch (held) {
    case 'clip':
      return turn ? turnedNext(turn) : `Find a clear spot, or ${clipNext(movement?.kind)}`;
    case 'stand':
      if (micPart === 'mast' || micPart === 'base') {
        return 'Move the base away from that path: the mic can stay where it is while the boom reaches.';
      }
      if (micPart === 'boom') {
        return 'Take the base round to another side, or set the mast higher, so that the boom passes free: the mic can stay where it is.';
      }
      return 'Move the mic away from that path, or raise or lower it. The base can stay where it is while the boom reaches.';
    default:
      return 'Move the mic out of that path.';
  }
}

const turnedNext = ({ way, by }: TurnAway): string =>
  `Turn the clip round the rim ${way}, seen from above: ${by}° on it has more room. Or find a clear spot.`;

function clipNext(movement: Nearest['movement']['kind'] | undefined): string {
  if (movement === 'leg') return 'turn the clip round the rim to where no leg is.';
  if (movement === 'swing') {
    return 'turn the clip round the rim, away from the cymbal, or lower the mic toward the head.';
  }
  return 'turn the clip round the rim, lower the mic toward the head, or draw it back toward the rim.';
}
