import { vec } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import { outOfReach } from '../../player/outOfReach.ts';
import type { Finding } from '../report.ts';

/**
 * One finding for every piece that a hand which plays it cannot reach. `numbers.right` and `numbers.left` say by how much each hand falls
 * short, `numbers.beyond` the more of the two.
 */
export function reachFindings({
  player,
  pieces,
}: Pick<Layout, 'player' | 'pieces'>): readonly Finding[] {
  const out = outOfReach(player, pieces);
  return pieces.filter(isStruck).flatMap(({ id, x, y, z }): Finding[] => {
    const short = out.filter(({ piece }) => piece === id);
    if (short.length === 0) return [];
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
  });
}
