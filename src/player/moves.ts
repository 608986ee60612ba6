import type { Piece } from '../layout/pieces/piece.ts';
import { isStruck, type Struck } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { Arm } from './arm.ts';
import { playsPiece, type Side, signOf } from './hands.ts';
import type { Move } from './move.ts';
import { strikeOn } from './strike.ts';
import { Stroke } from './stroke.ts';
import { arriving, leaving, Travel, type TravelEnd } from './travel.ts';

/** What the hands of a player can do on a kit. */
export interface Playing {
  readonly arm: Arm;
  /** Strokes first, then travels; the lead hand's before the other's, so that a mirrored kit lists its mirrored moves alike. */
  readonly moves: readonly Move[];
}

/** Rule M6: every stroke of every hand, and every travel between two pieces that the same hand plays. */
export const playingOf = (player: Player, pieces: readonly Piece[]): Playing =>
  createPlaying()(player, pieces);

/** A hand over the pieces that it plays. */
interface Hand {
  readonly side: Side;
  readonly struck: readonly Struck[];
}

/** What one player does on one kit after another. Moves between pieces that did not change are the same objects as before. */
export function createPlaying(): (player: Player, pieces: readonly Piece[]) => Playing {
  let known: Moves | undefined;
  return (player, pieces) => {
    if (known?.player !== player) known = new Moves(player);
    const moves = known;
    const struck = pieces.filter(isStruck);
    moves.forgetAllBut(struck);
    const sides: readonly Side[] =
      player.leadHand === 'right' ? ['right', 'left'] : ['left', 'right'];
    const hands = sides.map(
      (side): Hand => ({ side, struck: struck.filter((piece) => playsPiece(side, piece, player)) }),
    );
    const all = hands.flatMap((hand) => hand.struck.map((on): Move => moves.stroke(hand.side, on)));
    for (const { side, struck: played } of hands) {
      for (const from of played) {
        for (const to of played) if (to !== from) all.push(moves.travel(side, from, to));
      }
    }
    return { arm: moves.arm, moves: all };
  };
}

/** What is known of one piece as it is: how each hand strikes it, and how it goes on from there. */
interface KnownPiece {
  readonly stroke: Stroke;
  readonly leaves: TravelEnd;
  readonly arrives: TravelEnd;
  readonly travels: Map<Struck, Travel>;
}

/** The moves of one player that were needed so far, by the pieces as they were. */
class Moves {
  readonly player: Player;
  readonly arm: Arm;
  private readonly known: Readonly<Record<Side, Map<Struck, KnownPiece>>>;

  constructor(player: Player) {
    this.player = player;
    this.arm = new Arm(player);
    this.known = { right: new Map(), left: new Map() };
  }

  stroke(side: Side, on: Struck): Stroke {
    return this.piece(side, on).stroke;
  }

  travel(side: Side, from: Struck, to: Struck): Travel {
    const start = this.piece(side, from);
    const before = start.travels.get(to);
    if (before) return before;
    const way = { from: start.leaves, to: this.piece(side, to).arrives };
    const travel = new Travel(side, way, this.arm);
    start.travels.set(to, travel);
    return travel;
  }

  /** Keeps only what is about these pieces: a drag makes a new one in every frame. */
  forgetAllBut(pieces: readonly Struck[]): void {
    const kept = new Set(pieces);
    for (const known of Object.values(this.known)) {
      for (const [piece, { travels }] of known) {
        if (!kept.has(piece)) known.delete(piece);
        for (const to of travels.keys()) if (!kept.has(to)) travels.delete(to);
      }
    }
  }

  private piece(side: Side, piece: Struck): KnownPiece {
    const before = this.known[side].get(piece);
    if (before) return before;
    const strike = strikeOn(piece, signOf(side), this.arm, this.player.strokeHeight);
    const now = {
      stroke: new Stroke(side, piece.id, strike, this.arm),
      leaves: leaving(piece.id, strike, this.arm),
      arrives: arriving(piece.id, strike, this.arm),
      travels: new Map<Struck, Travel>(),
    };
    this.known[side].set(piece, now);
    return now;
  }
}
