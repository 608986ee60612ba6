import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { isStruck } from '../layout/pieces/piece.ts';
import { type Body, bodyOf } from '../player/body.ts';
import { playsPiece, type Side } from '../player/hands.ts';

/** What follows from the player alone. */
export interface PlayerFacts {
  /** Body lengths the arms and legs are computed with, mm: measured where given. */
  readonly body: Body;
  /** The same as they follow from stature (rule B1), whatever was measured. */
  readonly bodyFromStature: Body;
  /** Every piece that hands can strike, in the layout's order, with the hands that do (rules H1 and H2). */
  readonly playedBy: readonly PlayedBy[];
}

export interface PlayedBy {
  readonly piece: Id;
  /** Right before left; empty when no hand plays it. */
  readonly hands: readonly Side[];
}

const SIDES: readonly Side[] = ['right', 'left'];

/** The player's body lengths, and which hand plays what. */
export const playerFacts = ({
  player,
  pieces,
}: Pick<Layout, 'player' | 'pieces'>): PlayerFacts => ({
  body: bodyOf(player),
  bodyFromStature: bodyOf({ stature: player.stature, body: {} }),
  playedBy: pieces.filter(isStruck).map((piece) => ({
    piece: piece.id,
    hands: SIDES.filter((side) => playsPiece(side, piece, player)),
  })),
});
