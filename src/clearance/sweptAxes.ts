import { type ArmPart, BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import { ElbowBow } from '../player/elbowBow.ts';
import type { Move } from '../player/move.ts';
import type { Mm } from '../units/quantity.ts';
import type { AxisField } from './axisField.ts';
import { lowestFirst } from './lowestFirst.ts';
import { SweptAxis } from './sweptAxis.ts';
import { type BoxedMove, SCRATCH, type SweptMoves } from './sweptMoves.ts';

/** How often an interval is divided at most: there is room for two positions each time. */
const DEEPEST = SCRATCH / 2;
/** Parts that it is divided into at most. */
const MOST = 4;

const ENDS: Readonly<Record<ArmPart['name'], readonly [number, number]>> = {
  stick: [BUTT, TIP],
  hand: [GRIP, GRIP],
  forearm: [ELBOW, GRIP],
};

/**
 * The axes of sticks, hands and forearms in all moves, seen over a field. An interval of a move is taken as if both ends of the axis went evenly along
 * straight lines between its two times, and divided where they may be more than {@link BOW} off (rule C5) and anything may be below the field.
 * Lowest intervals come first, so that most others are known to be above the field.
 */
export class SweptAxes {
  private readonly swept: SweptMoves;
  private readonly field: AxisField;
  private readonly axis: SweptAxis;
  private readonly bow: ElbowBow;
  private part: ArmPart['name'] = 'stick';
  private move: Move | undefined;
  /** How far the axis' ends may be off, mm. */
  private startOff: Mm = 0;
  private endOff: Mm = 0;

  constructor(swept: SweptMoves, field: AxisField) {
    this.swept = swept;
    this.field = field;
    this.axis = new SweptAxis(field, swept.positions);
    this.bow = new ElbowBow(swept.arm);
  }

  /** Lowers the field to the axis of one part. */
  show(part: ArmPart['name']): void {
    this.part = part;
    const { moves } = this.swept;
    const intervals = moves.reduce((sum, boxed) => sum + boxed.intervals, 0);
    const moveOf = new Int32Array(intervals);
    const heights = new Float64Array(intervals);
    for (const [index, { position, intervals: count, interval }] of moves.entries()) {
      for (let i = 0; i < count; i++) {
        moveOf[interval + i] = index;
        heights[interval + i] = this.lowestIn(position + i * POSITION);
      }
    }
    for (const interval of lowestFirst(heights)) {
      this.showInterval(moves[moveOf[interval] as number] as BoxedMove, interval);
    }
  }

  private showInterval({ move, position, intervals, interval }: BoxedMove, at: number): void {
    const i = at - interval;
    this.move = move;
    this.field.turnTo(move.side);
    const { starts, ends, times } = this.swept.halvings;
    starts[0] = position + i * POSITION;
    ends[0] = position + (i + 1) * POSITION;
    times[0] = i / intervals;
    const { part } = this.axis;
    part.from = 0;
    part.to = 1;
    part.openFrom = 0;
    part.openTo = 1;
    this.lower(0, 1 / intervals);
  }

  /** The lowest of the axis' ends in the interval from a position on. */
  private lowestIn(position: number): Mm {
    const { positions } = this.swept;
    const [a, b] = ENDS[this.part];
    const first = Math.min(
      positions[position + a + 2] as number,
      positions[position + b + 2] as number,
    );
    const later = position + POSITION;
    return Math.min(first, positions[later + a + 2] as number, positions[later + b + 2] as number);
  }

  private lower(depth: number, dt: number): void {
    const { axis, move, swept } = this;
    const { starts, ends, times } = swept.halvings;
    const [a, b] = ENDS[this.part];
    const start = starts[depth] as number;
    const end = ends[depth] as number;
    this.findOff(start, end, dt);
    axis.take(start + a, start + b, end + a, end + b);
    axis.leavesNothing = depth === DEEPEST;
    axis.lower(this.startOff, this.endOff);
    const left = axis.part;
    if (left.openTo <= left.openFrom || !move) return;
    const { from, to, openFrom, openTo } = left;
    const time = times[depth] as number;
    // An axis is off by as much as its time squared.
    const off = Math.max(this.startOff, this.endOff);
    const parts = Math.min(MOST, Math.max(2, Math.ceil(Math.sqrt(off / this.field.ball.bow))));
    const room = swept.scratch + 2 * depth * POSITION;
    let before = start;
    for (let k = 0; k < parts; k++) {
      const after = k + 1 < parts ? room + (k & 1) * POSITION : end;
      if (k + 1 < parts) move.write(time + ((k + 1) / parts) * dt, swept.positions, after);
      starts[depth + 1] = before;
      ends[depth + 1] = after;
      times[depth + 1] = time + (k / parts) * dt;
      left.from = from;
      left.to = to;
      left.openFrom = openFrom;
      left.openTo = openTo;
      this.lower(depth + 1, dt / parts);
      before = after;
    }
  }

  /** Finds how far off the axis' ends may be in an interval of `dt` from one position to another. */
  private findOff(start: number, end: number, dt: number): void {
    const { move, part, swept } = this;
    if (!move) return;
    const { bend, speed } = move;
    const eighth = (dt * dt) / 8;
    const grip = bend.grip * eighth;
    this.startOff = grip;
    this.endOff = grip;
    if (part === 'stick') {
      // No end of a stick is ever farther from its grip than it is long, however it turns.
      this.startOff = Math.min(bend.butt * eighth, grip + 2 * swept.arm.behind);
      this.endOff = Math.min(bend.tip * eighth, grip + 2 * swept.arm.ahead);
    } else if (part === 'forearm') {
      const way = { room: speed.grip * dt, bend: bend.grip * dt * dt };
      const elbow = this.bow.between(swept.positions, start + GRIP, end + GRIP, way);
      // The elbow's ways to its two ends are together at most twice its room (rule C5).
      this.startOff =
        elbow <= this.field.ball.bow
          ? elbow
          : Math.min(elbow, 2 * swept.arm.elbowRoom(swept.positions, start, way.room));
    }
  }
}
