import { vec } from '../../geometry/vector.ts';
import type { Id } from '../../layout/fields.ts';
import { isDrum, isStruck, type Piece, type Struck } from '../../layout/pieces/piece.ts';
import type { Player } from '../../layout/player.ts';
import { playsPiece } from '../../player/hands.ts';
import type { Finding } from '../report.ts';

/**
 * One finding for all drums that no hand plays and one for the rest, at the first of them.
 *
 * U1 What no hand plays moves no arm: nothing is computed for it, and what is clear beside it may not be. One line for drums and hi-hats, which somebody
 *    surely plays, and one, a note, for cymbals and percussion, which may be spare.
 */
export function unplayedFindings(
  { leadHand, hiHat }: Pick<Player, 'leadHand' | 'hiHat'>,
  pieces: readonly Piece[],
): readonly Finding[] {
  const unplayed = pieces
    .filter(isStruck)
    .filter((piece) =>
      (['right', 'left'] as const).every((side) => !playsPiece(side, piece, { leadHand, hiHat })),
    );
  const isMain = (piece: Piece): boolean => isDrum(piece) || piece.kind === 'hiHat';
  return [
    ...lineOf(unplayed.filter(isMain), 'warn'),
    ...lineOf(
      unplayed.filter((piece) => !isMain(piece)),
      'note',
    ),
  ];
}

function lineOf(pieces: readonly Struck[], severity: 'warn' | 'note'): readonly Finding[] {
  const [first] = pieces;
  if (!first) return [];
  const about: readonly Id[] = pieces.map(({ id }) => id);
  return [
    {
      key: `piece-not-played:${severity}`,
      code: 'piece-not-played',
      severity,
      about,
      place: vec(first.x, first.y, first.z),
      numbers: { pieces: about.length },
    },
  ];
}
