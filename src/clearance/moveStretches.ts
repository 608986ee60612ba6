import { type Arm, BUTT, GRIP, POSITION, TIP } from '../player/arm.ts';
import type { Move } from '../player/move.ts';
import type { Mm } from '../units/quantity.ts';
import { PARTS, type SweptMoves } from './sweptMoves.ts';

/** Stretches that there is room for at first. */
const FIRST = 2048;
/** Shared stretches, of some 400 bytes each, at which new ones are begun: a long drag leaves those of moves behind that are gone. */
const MOST = 1 << 15;
/** Numbers in a row of bows: of the butt, the tip and the grip, and the elbow's room, mm. */
export const BOWS = 4;
/** Pieces that there are numbers for in a stretch: a power of two, so that their numbers come apart by bits. */
export const PIECES = 4;
export const stretchOf = (piece: number): number => piece >> 2;
export const partOf = (piece: number): number => piece & 3;

/**
 * Stretches of the moves in time: all moves whole, and halves of stretches as far as questions needed them, kept for the next question. A piece
 * is one arm part in one stretch, as one number. It is known as a capsule about the middle of the part's places at the stretch's two ends,
 * loosened by its slack. Kit frame.
 *
 * Rule C5, the slack: at every time of the stretch, no point of a part's axis is farther from its place in the middle than that.
 * - A point that bends by at most b keeps within b dt^2 / 8, its bow, of the straight way between its ends, so within half that way and its bow of
 *   the middle of the way.
 * - The elbow's ways to its two ends are together at most twice its room (`Arm.elbowRoom`), and a point is no farther from the middle of two others
 *   than half the sum of its distances from them.
 * - Between the ends of an axis the slack is at most the greater of theirs.
 */
export class MoveStretches {
  private readonly arm: Arm;
  /** Positions at the ends of stretches, and per stretch where in there its own are. */
  positions = new Float64Array(FIRST * POSITION);
  starts = new Int32Array(FIRST);
  ends = new Int32Array(FIRST);
  /** The middles between both, a position a stretch. */
  middles = new Float64Array(FIRST * POSITION);
  /** Slack of each piece, mm. */
  slack = new Float64Array(FIRST * PIECES);
  bows = new Float64Array(FIRST * BOWS);
  private count = 0;
  private placed = 0;
  private moves = new Int32Array(FIRST);
  private times = new Float64Array(FIRST);
  private lengths = new Float64Array(FIRST);
  /** Per stretch the first of its halves; 0 while it has none. */
  private halves = new Int32Array(FIRST);
  private readonly hand = new Float64Array(POSITION);
  /** The moves that were asked for, and the stretch of each whole. */
  private readonly known: Move[] = [];
  private readonly wholes = new Map<Move, number>();

  constructor(arm: Arm) {
    this.arm = arm;
  }

  /**
   * Those that everybody shares who asks about moves of the same arm: while a drum is dragged, the stretches of all moves that stay the same are
   * kept from motion to motion. They only ever become more, so that all who hold them may go on.
   */
  static shared(arm: Arm): MoveStretches {
    const before = sharedBy.get(arm);
    if (before && before.count < MOST) return before;
    const fresh = new MoveStretches(arm);
    sharedBy.set(arm, fresh);
    return fresh;
  }

  /** All parts in all moves whole, of swept moves of the arm. */
  whole({ moves }: Pick<SweptMoves, 'moves'>): Int32Array {
    const pieces = new Int32Array(moves.length * PARTS);
    for (const [index, { move }] of moves.entries()) {
      const stretch = this.wholes.get(move) ?? this.begin(move);
      for (let part = 0; part < PARTS; part++) {
        pieces[index * PARTS + part] = stretch * PIECES + part;
      }
    }
    return pieces;
  }

  private begin(move: Move): number {
    const index = this.known.push(move) - 1;
    const stretch = this.add(index, 0, 1, [this.at(index, 0), this.at(index, 1)]);
    this.wholes.set(move, stretch);
    return stretch;
  }

  /** The first half of a piece in time; the second half is PIECES further. */
  halved(piece: number): number {
    const stretch = stretchOf(piece);
    const known = this.halves[stretch] as number;
    return (known > 0 ? known : this.halve(stretch)) * PIECES + partOf(piece);
  }

  private halve(stretch: number): number {
    const first = this.count;
    const index = this.moves[stretch] as number;
    const from = this.times[stretch] as number;
    const dt = (this.lengths[stretch] as number) / 2;
    const start = this.starts[stretch] as number;
    const end = this.ends[stretch] as number;
    const middle = this.at(index, from + dt);
    this.add(index, from, dt, [start, middle]);
    this.add(index, from + dt, dt, [middle, end]);
    this.halves[stretch] = first;
    return first;
  }

  private move(index: number): Move {
    return this.known[index] as Move;
  }

  /** Keeps the position of a move at a time. */
  private at(index: number, time: number): number {
    const at = this.placed;
    this.placed += POSITION;
    if (this.placed > this.positions.length) this.positions = doubled(this.positions);
    const p = this.positions;
    const move = this.move(index);
    move.write(time, p, at);
    if (move.side === 'left') for (let k = at; k < at + POSITION; k += 3) p[k] = -(p[k] as number);
    return at;
  }

  private add(
    index: number,
    from: number,
    dt: number,
    [start, end]: readonly [number, number],
  ): number {
    if (this.count === this.moves.length) this.grow();
    const stretch = this.count++;
    this.moves[stretch] = index;
    this.times[stretch] = from;
    this.lengths[stretch] = dt;
    this.starts[stretch] = start;
    this.ends[stretch] = end;
    const p = this.positions;
    const middle = stretch * POSITION;
    for (let k = 0; k < POSITION; k++) {
      this.middles[middle + k] = ((p[start + k] as number) + (p[end + k] as number)) / 2;
    }
    this.loosen(stretch);
    return stretch;
  }

  private loosen(stretch: number): void {
    const { bend, speed, side } = this.move(this.moves[stretch] as number);
    const dt = this.lengths[stretch] as number;
    const start = this.starts[stretch] as number;
    const end = this.ends[stretch] as number;
    const bow = (dt * dt) / 8;
    const gripWay = this.way(start + GRIP, end + GRIP);
    // A bent way's velocity is nowhere farther from its mean than the bend times dt / 2: the way is longer than straight by at most that times dt.
    const longest = Math.min(speed.grip * dt, gripWay + 4 * bend.grip * bow);
    const { hand } = this;
    for (let k = GRIP; k < GRIP + 3; k++) hand[k] = this.positions[start + k] as number;
    if (side === 'left') hand[GRIP] = -(hand[GRIP] as number);
    const room = this.arm.elbowRoom(hand, 0, longest);
    const row = stretch * BOWS;
    const butt = bend.butt * bow;
    const tip = bend.tip * bow;
    const grip = bend.grip * bow;
    this.bows[row] = butt;
    this.bows[row + 1] = tip;
    this.bows[row + 2] = grip;
    this.bows[row + 3] = room;
    const slack = stretch * PIECES;
    const buttSlack = this.way(start + BUTT, end + BUTT) / 2 + butt;
    const tipSlack = this.way(start + TIP, end + TIP) / 2 + tip;
    this.slack[slack] = Math.max(buttSlack, tipSlack);
    this.slack[slack + 1] = gripWay / 2 + grip;
    this.slack[slack + 2] = Math.max(room, gripWay / 2 + grip);
  }

  private way(from: number, to: number): Mm {
    const p = this.positions;
    const x = (p[to] as number) - (p[from] as number);
    const y = (p[to + 1] as number) - (p[from + 1] as number);
    const z = (p[to + 2] as number) - (p[from + 2] as number);
    return Math.sqrt(x * x + y * y + z * z);
  }

  private grow(): void {
    for (const key of ['middles', 'slack', 'bows', 'times', 'lengths'] as const) {
      this[key] = doubled(this[key]);
    }
    for (const key of ['starts', 'ends', 'moves', 'halves'] as const) {
      const longer = new Int32Array(2 * this[key].length);
      longer.set(this[key]);
      this[key] = longer;
    }
  }
}

const sharedBy = new WeakMap<Arm, MoveStretches>();

function doubled(table: Float64Array): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(2 * table.length);
  longer.set(table);
  return longer;
}
