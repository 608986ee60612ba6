import { type Arm, BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import type { Move } from '../player/move.ts';
import type { Playing } from '../player/moves.ts';
import type { Mm } from '../units/quantity.ts';

/** Parts of an arm in a position: stick, hand, forearm, as `Arm.parts` lists them. */
export const PARTS = 3;
/** Numbers in a box: least x, y, z, then most x, y, z. */
export const BOX = 6;
/** Intervals of time in a group, the middle level between a move and its intervals. */
export const GROUP = 4;
/** Intervals of a move's time that are boxed apart, whole groups: short moves need fewer. */
const STROKE_INTERVALS = GROUP;
const TRAVEL_INTERVALS = 4 * GROUP;
/** Positions that a search may hold at once. */
export const SCRATCH = 24;

type CopiedTable = 'positions' | 'elbowRoom' | 'boxes' | 'groupBoxes' | 'moveBoxes';

/** One move, boxed. Offsets into the tables of {@link SweptMoves}. */
export interface BoxedMove {
  readonly move: Move;
  readonly intervals: number;
  /** Offset of the position at t = 0 in `positions`; the next ones follow at even times. */
  readonly position: number;
  /** Index of the first of its intervals among all. */
  readonly interval: number;
}

/**
 * All moves of a player on a kit with boxes round what each part sweeps in each interval of time: built once per change of kit or
 * player, so that a mic costs only its own search. Hand space.
 */
export class SweptMoves {
  readonly arm: Arm;
  readonly moves: readonly BoxedMove[];
  /** Positions of all moves; from `scratch` on there is room for a search to write {@link SCRATCH} more. */
  readonly positions: Float64Array;
  readonly scratch: number;
  /** Boxes of stick, hand and forearm: of every interval, of every group of intervals, of every move. */
  readonly boxes: Float64Array;
  readonly groupBoxes: Float64Array;
  readonly moveBoxes: Float64Array;
  /** Per interval: how far the elbow can be from the nearer of its end positions, mm. */
  readonly elbowRoom: Float64Array;

  /** `before`: the moves swept last; what is known of the same moves is taken from there. */
  constructor({ arm, moves }: Playing, before?: SweptMoves) {
    this.arm = arm;
    let position = 0;
    let interval = 0;
    this.moves = moves.map((move) => {
      const intervals = move.from === null ? STROKE_INTERVALS : TRAVEL_INTERVALS;
      const boxed = { move, intervals, position, interval };
      position += (intervals + 1) * POSITION;
      interval += intervals;
      return boxed;
    });
    this.scratch = position;
    this.positions = new Float64Array(position + SCRATCH * POSITION);
    this.boxes = new Float64Array(interval * PARTS * BOX);
    this.elbowRoom = new Float64Array(interval);
    this.groupBoxes = new Float64Array((interval / GROUP) * PARTS * BOX);
    this.moveBoxes = new Float64Array(moves.length * PARTS * BOX);
    const known = new Map(before?.moves.map((boxed, index) => [boxed.move, index]));
    for (const [index, boxed] of this.moves.entries()) {
      const same = known.get(boxed.move);
      if (before && same !== undefined) {
        this.copy(before, same, index);
        continue;
      }
      this.boxIntervals(boxed);
      const group = boxed.interval / GROUP;
      const groups = boxed.intervals / GROUP;
      for (let g = group; g < group + groups; g++) {
        join(this.boxes, g * GROUP, GROUP, this.groupBoxes.subarray(g * PARTS * BOX));
      }
      join(this.groupBoxes, group, groups, this.moveBoxes.subarray(index * PARTS * BOX));
    }
  }

  /** Takes all that is known of a move from where it was swept before. */
  private copy(before: SweptMoves, from: number, to: number): void {
    const [old, now] = [before.moves[from], this.moves[to]];
    if (!old || !now) return;
    const { intervals } = now;
    const box = PARTS * BOX;
    const table = (key: CopiedTable, source: number, at: number, count: number): void =>
      this[key].set(before[key].subarray(source, source + count), at);
    table('positions', old.position, now.position, (intervals + 1) * POSITION);
    table('elbowRoom', old.interval, now.interval, intervals);
    table('boxes', old.interval * box, now.interval * box, intervals * box);
    const groups = box / GROUP;
    table('groupBoxes', old.interval * groups, now.interval * groups, intervals * groups);
    table('moveBoxes', from * box, to * box, box);
  }

  private boxIntervals({ move, intervals, position, interval }: BoxedMove): void {
    const dt = 1 / intervals;
    for (let i = 0; i <= intervals; i++) {
      move.write(i * dt, this.positions, position + i * POSITION);
    }
    // A point whose path bends by at most b stays within b dt^2 / 8 of the straight way between its two ends.
    const bow = (dt * dt) / 8;
    const [stick, hand, forearm] = this.arm.parts;
    if (!stick || !hand || !forearm) return;
    const stickSlack = stick.radius + bow * Math.max(move.bend.butt, move.bend.tip);
    const gripBow = bow * move.bend.grip;
    const room = move.speed.grip * dt;
    for (let i = 0; i < intervals; i++) {
      const from = position + i * POSITION;
      const elbow = this.arm.elbowRoom(this.positions, from, room);
      this.elbowRoom[interval + i] = elbow;
      const box = (interval + i) * PARTS * BOX;
      this.grow(box, from + BUTT, from + TIP, stickSlack);
      this.grow(box + BOX, from + GRIP, from + GRIP, hand.radius + gripBow);
      const forearmSlack = forearm.radius + Math.max(elbow, gripBow);
      this.grow(box + 2 * BOX, from + ELBOW, from + GRIP, forearmSlack);
    }
  }

  /** The box round two points, each at the start of an interval and at its end, grown by `slack`. */
  private grow(box: number, first: number, second: number, slack: Mm): void {
    const p = this.positions;
    for (let axis = 0; axis < 3; axis++) {
      const a = p[first + axis] as number;
      const b = p[second + axis] as number;
      const c = p[first + POSITION + axis] as number;
      const d = p[second + POSITION + axis] as number;
      this.boxes[box + axis] = Math.min(Math.min(a, b), Math.min(c, d)) - slack;
      this.boxes[box + 3 + axis] = Math.max(Math.max(a, b), Math.max(c, d)) + slack;
    }
  }
}

/** Writes the box of each part round `count` entries of a table of boxes, from the entry `first` on, to the start of `into`. */
function join(boxes: Float64Array, first: number, count: number, into: Float64Array): void {
  const row = PARTS * BOX;
  for (let k = 0; k < row; k++) {
    const low = k % BOX < 3;
    let end = boxes[first * row + k] as number;
    for (let entry = first + 1; entry < first + count; entry++) {
      const next = boxes[entry * row + k] as number;
      if (low ? next < end : next > end) end = next;
    }
    into[k] = end;
  }
}
