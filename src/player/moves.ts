import type { Piece } from '../layout/pieces/piece.ts';
import { isStruck, type Struck } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { Arm } from './arm.ts';
import { playsPiece, type Side, signOf } from './hands.ts';
import type { Move } from './move.ts';
import { type Strike, strikeOn } from './strike.ts';
import { Stroke } from './stroke.ts';
import { Travel } from './travel.ts';

/** What the hands of a player can do on a kit. */
export interface Playing {
  readonly arm: Arm;
  /** Strokes first, then travels; the lead hand's before the other's, so that a mirrored kit lists its mirrored moves alike. */
  readonly moves: readonly Move[];
}

/** Rule M6: every stroke of every hand, and every travel between two pieces that the same hand plays. */
export function playingOf(player: Player, pieces: readonly Piece[]): Playing {
  const arm = new Arm(player);
  const struck = pieces.filter(isStruck);
  const sides: readonly Side[] =
    player.leadHand === 'right' ? ['right', 'left'] : ['left', 'right'];
  const hands = sides.map((side) => ({
    side,
    strikes: struck
      .filter((piece) => playsPiece(side, piece, player))
      .map((piece) => ({ piece: piece.id, strike: strikeOf(piece, side, arm, player) })),
  }));
  const strokes = hands.flatMap(({ side, strikes }) =>
    strikes.map(({ piece, strike }) => new Stroke(side, piece, strike, arm)),
  );
  const travels = hands.flatMap(({ side, strikes }) =>
    strikes.flatMap((from) =>
      strikes.filter((to) => to !== from).map((to) => new Travel(side, { from, to }, arm)),
    ),
  );
  return { arm, moves: [...strokes, ...travels] };
}

const strikeOf = (piece: Struck, side: Side, arm: Arm, player: Player): Strike =>
  strikeOn(piece, signOf(side), arm, player.strokeHeight);
