import type { Mount } from '../../layout/mics/mount.ts';
import type { Nearest } from './movementWords.ts';

type Held = Mount['kind'];

/** What gets a mic out of the way of what moves, by what holds it, what moves and which part of it is met. */
export function moveAwayNext(held: Held | undefined, nearest: Nearest | undefined): string {
  const { movement, micPart } = nearest ?? {};
  switch (held) {
    case 'clip':
      if (movement?.kind === 'leg') return 'Turn the clip round the rim to where no leg is.';
      if (movement?.kind === 'swing') {
        return 'Turn the clip round the rim, away from the cymbal, or lower the mic toward the head.';
      }
      return 'Turn the clip round the rim, away from the player, lower the mic toward the head, or draw it back toward the rim.';
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
