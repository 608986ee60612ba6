import { listed } from '../geometry/listed.ts';
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

/** What one player does on one kit after another. Moves between pieces that did not change are the same objects as before. */
export function createPlaying(): (player: Player, pieces: readonly Piece[]) => Playing {
  let known: Moves | undefined;
  return (player, pieces) => {
    if (known?.player !== player) known = new Moves(player);
    const moves = known;
    const struck: Struck[] = [];
    for (const piece of pieces) if (isStruck(piece)) struck.push(piece);
    moves.forgetAllBut(struck);
    const sides: readonly Side[] =
      player.leadHand === 'right' ? ['right', 'left'] : ['left', 'right'];
    const played = listed(sides, (side) => {
      const known: KnownPiece[] = [];
      for (const piece of struck) {
        if (playsPiece(side, piece, player)) known.push(moves.piece(side, piece));
      }
      return known;
    });
    const all: Move[] = [];
    for (const pieces of played) for (const { stroke } of pieces) all.push(stroke);
    for (const pieces of played) {
      for (const from of pieces) {
        for (const to of pieces) if (to !== from) all.push(moves.travel(from, to));
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
  readonly travels: Map<KnownPiece, Travel>;
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

  /** From one piece to another of the same hand. */
  travel(from: KnownPiece, to: KnownPiece): Travel {
    const before = from.travels.get(to);
    if (before) return before;
    const way = { from: from.leaves, to: to.arrives };
    const travel = new Travel(from.stroke.side, way, this.arm);
    from.travels.set(to, travel);
    return travel;
  }

  /** Keeps only what is about these pieces: a drag makes a new one in every frame. */
  forgetAllBut(pieces: readonly Struck[]): void {
    const kept = new Set(pieces);
    for (const known of Object.values(this.known)) {
      const gone = [...known].filter(([piece]) => !kept.has(piece));
      for (const [piece] of gone) known.delete(piece);
      for (const { travels } of known.values()) for (const [, to] of gone) travels.delete(to);
    }
  }

  /** A piece as a hand plays it. */
  piece(side: Side, piece: Struck): KnownPiece {
    const before = this.known[side].get(piece);
    if (before) return before;
    const strike = strikeOn(piece, signOf(side), this.arm, this.player.strokeHeight);
    const now = {
      stroke: new Stroke(side, piece.id, strike, this.arm),
      leaves: leaving(piece.id, strike, this.arm),
      arrives: arriving(piece.id, strike, this.arm),
      travels: new Map<KnownPiece, Travel>(),
    };
    this.known[side].set(piece, now);
    return now;
  }
}
