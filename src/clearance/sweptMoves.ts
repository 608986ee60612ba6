import { listed } from '../geometry/listed.ts';
import { type Arm, BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import type { Move } from '../player/move.ts';
import type { Playing } from '../player/moves.ts';
import type { Mm } from '../units/quantity.ts';

/** Parts of an arm in a position, by their places in `Arm.parts`. */
export const PARTS = 3;
export const STICK = 0;
export const HAND = 1;
export const FOREARM = 2;
/** Numbers in a box: least x, y, z, then most x, y, z. */
export const BOX = 6;
/** Numbers in the boxes of all parts. */
const ROW = PARTS * BOX;
/** Intervals of time in a group, the middle level between a move and its intervals. */
export const GROUP = 4;
/** A move whose grip goes no farther than this is boxed in one group of intervals, one that goes farther in two. */
const SHORT: Mm = 700;
/** Positions that a search may hold at once. */
export const SCRATCH = 24;

type CopiedTable = 'positions' | 'elbowBow' | 'boxes' | 'groupBoxes' | 'moveBoxes' | 'armBoxes';

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
  /** Room for a search to note the intervals that it halves at once: offsets of the positions at both ends, their time, the axes' distances there. */
  readonly halvings = {
    starts: new Int32Array(SCRATCH + 1),
    ends: new Int32Array(SCRATCH + 1),
    times: new Float64Array(SCRATCH + 1),
    firsts: new Float64Array(SCRATCH + 1),
    lasts: new Float64Array(SCRATCH + 1),
  };
  /** Boxes of stick, hand and forearm: of every interval, of every group of intervals, of every move. */
  readonly boxes: Float64Array;
  readonly groupBoxes: Float64Array;
  readonly moveBoxes: Float64Array;
  /** Boxes of the whole arm over every move. */
  readonly armBoxes: Float64Array;
  /** Per interval: how far the elbow can be from the straight way between its end positions, mm. */
  readonly elbowBow: Float64Array;
  /** Indices of the moves that were not known before. */
  readonly fresh: Int32Array;
  private places: Map<Move, number> | undefined;

  /** `before`: the moves swept last; what is known of the same moves is taken from there. */
  constructor({ arm, moves }: Playing, before?: SweptMoves) {
    this.arm = arm;
    let position = 0;
    let interval = 0;
    this.moves = listed(moves, (move) => {
      const intervals = move.speed.grip <= SHORT ? GROUP : 2 * GROUP;
      const boxed = { move, intervals, position, interval };
      position += (intervals + 1) * POSITION;
      interval += intervals;
      return boxed;
    });
    this.scratch = position;
    this.positions = new Float64Array(position + SCRATCH * POSITION);
    this.boxes = new Float64Array(interval * ROW);
    this.elbowBow = new Float64Array(interval);
    this.groupBoxes = new Float64Array((interval / GROUP) * ROW);
    this.moveBoxes = new Float64Array(moves.length * ROW);
    this.armBoxes = new Float64Array(moves.length * BOX);
    const fresh: number[] = [];
    for (let index = 0; index < moves.length; ) {
      const count = before ? this.copyRun(before, index) : 0;
      if (count === 0) {
        this.sweep(index);
        fresh.push(index);
      }
      index += Math.max(1, count);
    }
    this.fresh = Int32Array.from(fresh);
  }

  /** Where a move is in the list; undefined when it is not among them. */
  indexOf(move: Move): number | undefined {
    this.places ??= new Map(this.moves.map((boxed, index) => [boxed.move, index]));
    return this.places.get(move);
  }

  /** How far the elbow can be from the straight way in any interval of a move, mm. */
  mostElbowBow({ interval, intervals }: BoxedMove): Mm {
    let most = 0;
    for (let i = interval; i < interval + intervals; i++) {
      const bow = this.elbowBow[i] as number;
      if (bow > most) most = bow;
    }
    return most;
  }

  /** Takes all that is known of the moves from `to` on that follow each other as they did before; says how many they were. */
  private copyRun(before: SweptMoves, to: number): number {
    const first = this.moves[to] as BoxedMove;
    const from = before.indexOf(first.move);
    if (from === undefined) return 0;
    let count = 1;
    let next = this.moves[to + 1];
    while (next && next.move === before.moves[from + count]?.move) {
      count++;
      next = this.moves[to + count];
    }
    const old = before.moves[from] as BoxedMove;
    const last = this.moves[to + count - 1] as BoxedMove;
    const intervals = last.interval + last.intervals - first.interval;
    const table = (key: CopiedTable, source: number, at: number, size: number): void =>
      this[key].set(before[key].subarray(source, source + size), at);
    const positions = last.position + (last.intervals + 1) * POSITION - first.position;
    table('positions', old.position, first.position, positions);
    table('elbowBow', old.interval, first.interval, intervals);
    table('boxes', old.interval * ROW, first.interval * ROW, intervals * ROW);
    const groups = ROW / GROUP;
    table('groupBoxes', old.interval * groups, first.interval * groups, intervals * groups);
    table('moveBoxes', from * ROW, to * ROW, count * ROW);
    table('armBoxes', from * BOX, to * BOX, count * BOX);
    return count;
  }

  private sweep(index: number): void {
    const boxed = this.moves[index] as BoxedMove;
    this.boxIntervals(boxed);
    const group = boxed.interval / GROUP;
    const groups = boxed.intervals / GROUP;
    for (let g = group; g < group + groups; g++) this.joinGroup(g);
    this.joinMove(index, group, groups);
  }

  private joinGroup(group: number): void {
    const { boxes, groupBoxes } = this;
    for (let part = 0; part < ROW; part += BOX) {
      for (let k = part; k < part + 3; k++) {
        groupBoxes[group * ROW + k] = lowest(boxes, group * GROUP * ROW + k, GROUP);
        groupBoxes[group * ROW + k + 3] = highest(boxes, group * GROUP * ROW + k + 3, GROUP);
      }
    }
  }

  private joinMove(index: number, group: number, groups: number): void {
    const { groupBoxes, moveBoxes, armBoxes } = this;
    const arm = index * BOX;
    for (let part = 0; part < ROW; part += BOX) {
      for (let axis = 0; axis < 3; axis++) {
        const at = part + axis;
        const low = lowest(groupBoxes, group * ROW + at, groups);
        const high = highest(groupBoxes, group * ROW + at + 3, groups);
        moveBoxes[index * ROW + at] = low;
        moveBoxes[index * ROW + at + 3] = high;
        if (part === 0 || low < (armBoxes[arm + axis] as number)) armBoxes[arm + axis] = low;
        if (part === 0 || high > (armBoxes[arm + axis + 3] as number))
          armBoxes[arm + axis + 3] = high;
      }
    }
  }

  private boxIntervals({ move, intervals, position, interval }: BoxedMove): void {
    const dt = 1 / intervals;
    for (let i = 0; i <= intervals; i++) {
      move.write(i * dt, this.positions, position + i * POSITION);
    }
    // A point whose path bends by at most b stays within b dt^2 / 8 of the straight way between its two ends.
    const bow = (dt * dt) / 8;
    const { parts } = this.arm;
    const stick = parts[STICK];
    const hand = parts[HAND];
    const forearm = parts[FOREARM];
    const stickSlack = stick.radius + bow * Math.max(move.bend.butt, move.bend.tip);
    const gripBow = bow * move.bend.grip;
    const way = { room: move.speed.grip * dt, bend: move.bend.grip * dt * dt };
    for (let i = 0; i < intervals; i++) {
      const from = position + i * POSITION;
      const elbow = this.arm.elbowBow(this.positions, from, from + POSITION, way);
      this.elbowBow[interval + i] = elbow;
      const box = (interval + i) * ROW;
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
      const lowAB = a < b ? a : b;
      const lowCD = c < d ? c : d;
      const highAB = a < b ? b : a;
      const highCD = c < d ? d : c;
      this.boxes[box + axis] = (lowAB < lowCD ? lowAB : lowCD) - slack;
      this.boxes[box + 3 + axis] = (highAB > highCD ? highAB : highCD) + slack;
    }
  }
}

/** The lowest of `count` numbers that stand a row of boxes apart. */
function lowest(boxes: Float64Array, at: number, count: number): number {
  let low = boxes[at] as number;
  for (let i = at + ROW; i < at + count * ROW; i += ROW) {
    const next = boxes[i] as number;
    if (next < low) low = next;
  }
  return low;
}

function highest(boxes: Float64Array, at: number, count: number): number {
  let high = boxes[at] as number;
  for (let i = at + ROW; i < at + count * ROW; i += ROW) {
    const next = boxes[i] as number;
    if (next > high) high = next;
  }
  return high;
}
