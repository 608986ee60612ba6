import { type Arm, BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import type { Move } from '../player/move.ts';
import type { Playing } from '../player/moves.ts';
import type { Mm } from '../units/quantity.ts';

/** Parts of an arm in a position: stick, hand, forearm, as `Arm.parts` lists them. */
export const PARTS = 3;
/** Numbers in a box: least x, y, z, then most x, y, z. */
export const BOX = 6;
/** Pieces of a move's time that are boxed apart: short moves need fewer. */
const STROKE_INTERVALS = 4;
const TRAVEL_INTERVALS = 8;

/** One move, boxed. Offsets into the tables of {@link SweptMoves}. */
export interface BoxedMove {
  readonly move: Move;
  readonly intervals: number;
  /** Offset of the position at t = 0 in `positions`; the next ones follow at even times. */
  readonly position: number;
  /** Offset of the box of part 0 in interval 0 in `boxes`: parts within intervals. */
  readonly box: number;
}

/**
 * All moves of a player on a kit with boxes round what each part sweeps in each interval of time: built once per change of kit or
 * player, so that a mic costs only its own search. Hand space.
 */
export class SweptMoves {
  readonly arm: Arm;
  readonly moves: readonly BoxedMove[];
  readonly positions: Float64Array;
  readonly boxes: Float64Array;
  /** One box per move round all it sweeps. */
  readonly moveBoxes: Float64Array;

  constructor({ arm, moves }: Playing) {
    this.arm = arm;
    let position = 0;
    let box = 0;
    this.moves = moves.map((move) => {
      const intervals = move.from === null ? STROKE_INTERVALS : TRAVEL_INTERVALS;
      const boxed = { move, intervals, position, box };
      position += (intervals + 1) * POSITION;
      box += intervals * PARTS * BOX;
      return boxed;
    });
    this.positions = new Float64Array(position);
    this.boxes = new Float64Array(box);
    this.moveBoxes = new Float64Array(moves.length * BOX);
    for (const [index, boxed] of this.moves.entries()) this.fill(boxed, index * BOX);
  }

  private fill(boxed: BoxedMove, whole: number): void {
    const { move, intervals } = boxed;
    for (let i = 0; i <= intervals; i++) {
      const at = boxed.position + i * POSITION;
      move.write(i / intervals, this.positions.subarray(at, at + POSITION));
    }
    for (let axis = 0; axis < 3; axis++) {
      this.moveBoxes[whole + axis] = Number.POSITIVE_INFINITY;
      this.moveBoxes[whole + 3 + axis] = Number.NEGATIVE_INFINITY;
    }
    for (let i = 0; i < intervals; i++) this.boxInterval(boxed, i, whole);
  }

  /** A point whose path bends by at most b stays within b dt^2 / 8 of the straight way between its two ends. */
  private boxInterval(
    { move, intervals, position, box }: BoxedMove,
    i: number,
    whole: number,
  ): void {
    const dt = 1 / intervals;
    const from = position + i * POSITION;
    const { grip, butt, tip } = move.bend;
    const bow = (dt * dt) / 8;
    const elbow = this.elbowRoom(from, move.speed.grip * dt);
    const [stick, hand, forearm] = this.arm.parts;
    if (!stick || !hand || !forearm) return;
    const at = box + i * PARTS * BOX;
    this.grow(at, [from + BUTT, from + TIP], stick.radius + bow * Math.max(butt, tip));
    this.grow(at + BOX, [from + GRIP, from + GRIP], hand.radius + bow * grip);
    this.grow(
      at + 2 * BOX,
      [from + ELBOW, from + GRIP],
      forearm.radius + Math.max(elbow, bow * grip),
    );
    for (let b = at; b < at + PARTS * BOX; b += BOX) {
      for (let axis = 0; axis < 3; axis++) {
        const low = this.boxes[b + axis] as number;
        const high = this.boxes[b + 3 + axis] as number;
        if (low < (this.moveBoxes[whole + axis] as number)) this.moveBoxes[whole + axis] = low;
        if (high > (this.moveBoxes[whole + 3 + axis] as number))
          this.moveBoxes[whole + 3 + axis] = high;
      }
    }
  }

  /** How far the elbow can be from the nearer of its two end positions. */
  private elbowRoom(from: number, room: Mm): Mm {
    const position = this.positions.subarray(from, from + POSITION);
    return Math.min((this.arm.elbowRate(position, room) * room) / 2, 2 * this.arm.upper + room);
  }

  /** The box round two points, each now and one interval later, grown by `slack`. */
  private grow(box: number, points: readonly [number, number], slack: Mm): void {
    const p = this.positions;
    for (let axis = 0; axis < 3; axis++) {
      const a = p[points[0] + axis] as number;
      const b = p[points[1] + axis] as number;
      const c = p[points[0] + POSITION + axis] as number;
      const d = p[points[1] + POSITION + axis] as number;
      this.boxes[box + axis] = Math.min(a, b, c, d) - slack;
      this.boxes[box + 3 + axis] = Math.max(a, b, c, d) + slack;
    }
  }
}
