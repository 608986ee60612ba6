import { vec } from '../../geometry/vector.ts';
import { isStruck, type Piece } from '../../layout/pieces/piece.ts';
import type { Player } from '../../layout/player.ts';
import { beyondReachOf } from '../../player/outOfReach.ts';
import type { Finding } from '../report.ts';

/**
 * One finding for a piece that a hand which plays it cannot reach. `numbers.right` and `numbers.left` say by how much each hand falls
 * short, `numbers.beyond` the more of the two.
 */
export function reachFindings(player: Player): (piece: Piece) => readonly Finding[] {
  const beyondReach = beyondReachOf(player);
  return (piece) => {
    if (!isStruck(piece)) return [];
    const short = beyondReach(piece);
    if (short.length === 0) return [];
    const { id, x, y, z } = piece;
    const hands = Object.fromEntries(short.map(({ side, beyond }) => [side, beyond]));
    return [
      {
        key: `piece-out-of-reach:${id}`,
        code: 'piece-out-of-reach',
        severity: 'warn',
        about: [id],
        place: vec(x, y, z),
        numbers: { ...hands, beyond: Math.max(...short.map(({ beyond }) => beyond)) },
      },
    ];
  };
}
