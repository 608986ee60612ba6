import { vec } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import { outOfReach } from '../../player/outOfReach.ts';
import type { Finding } from '../report.ts';

/** One finding for every piece that a hand which plays it cannot reach. `numbers.side` is 1 for the right hand, -1 for the left. */
export const reachFindings = ({
  player,
  pieces,
}: Pick<Layout, 'player' | 'pieces'>): readonly Finding[] =>
  outOfReach(player, pieces).map(({ piece, side, beyond }) => {
    const at = pieces.find(({ id }) => id === piece);
    return {
      key: `piece-out-of-reach:${piece}:${side}`,
      code: 'piece-out-of-reach',
      severity: 'warn',
      about: [piece],
      place: at && isStruck(at) ? vec(at.x, at.y, at.z) : undefined,
      numbers: { beyond, side: side === 'right' ? 1 : -1 },
    };
  });
