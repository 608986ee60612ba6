import type { Id } from '../layout/fields.ts';
import { isStruck, type Piece, type Struck } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import type { Mm } from '../units/quantity.ts';
import { Arm } from './arm.ts';
import { playsPiece, type Side, signOf } from './hands.ts';
import { raisedTo, strikeOn } from './strike.ts';

/** A piece that a hand which plays it cannot reach, leaning as far as the trunk leans. */
export interface OutOfReach {
  readonly piece: Id;
  readonly side: Side;
  /** How far it is beyond, mm: the larger of contact and full stroke. */
  readonly beyond: Mm;
}

/** Rule A2: what the player's hands do not reach. */
export const outOfReach = (player: Player, pieces: readonly Piece[]): readonly OutOfReach[] =>
  pieces.filter(isStruck).flatMap(beyondReachOf(player));

/** The same of one piece after another. */
export function beyondReachOf(player: Player): (piece: Struck) => readonly OutOfReach[] {
  const arm = new Arm(player);
  const sides: readonly Side[] = ['right', 'left'];
  return (piece) =>
    sides
      .filter((side) => playsPiece(side, piece, player))
      .map((side): OutOfReach => {
        const strike = strikeOn(piece, signOf(side), arm, player.strokeHeight);
        const beyond = [0, 1].map((s) => {
          const { x, y, z } = raisedTo(strike, s).grip;
          return arm.beyond(x, y, z);
        });
        return { piece: piece.id, side, beyond: Math.max(...beyond) };
      })
      .filter(({ beyond }) => beyond > 0);
}
