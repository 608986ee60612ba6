import type { Id } from '../layout/fields.ts';
import { isStruck, type Piece, type Struck } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import type { Mm } from '../units/quantity.ts';
import { Arm } from './arm.ts';
import { playsPiece, type Side, signOf } from './hands.ts';
import { raisedTo, type Strike, strikeOn } from './strike.ts';

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
  return (piece) => {
    const found: OutOfReach[] = [];
    for (const side of sides) {
      if (!playsPiece(side, piece, player)) continue;
      const strike = strikeOn(piece, signOf(side), arm, player.strokeHeight);
      const beyond = Math.max(beyondAt(arm, strike, 0), beyondAt(arm, strike, 1));
      if (beyond > 0) found.push({ piece: piece.id, side, beyond });
    }
    return found;
  };
}

function beyondAt(arm: Arm, strike: Strike, s: number): Mm {
  const { x, y, z } = raisedTo(strike, s).grip;
  return arm.beyond(x, y, z);
}
