import { SegmentGap } from '../geometry/segments.ts';
import { POSITION } from '../player/arm.ts';
import type { Move } from '../player/move.ts';
import type { Mm } from '../units/quantity.ts';
import { boxGap, type MicShape } from './micShape.ts';
import { BOX, type BoxedMove, PARTS, type SweptMoves } from './sweptMoves.ts';

/**
 * Rule C2: the search stops where nothing left can be nearer by more than this, and what it reports is lowered by it: the clearance shown
 * is at or below the exact minimum of the model, by at most this many mm.
 */
export const TOLERANCE: Mm = 0.05;
/** Times nearer than this are one moment: a stick's tip moves under a hundredth of a mm in it. */
const MOMENT = 1e-6;
/** Axes nearer than this cross: they have no direction between them. */
const CROSSING = 1e-9;
const DEEPEST = 32;

/** What a search found. `clearance` is that of the moment found: the exact minimum is at most TOLERANCE below. */
export interface NearestMoment {
  readonly clearance: Mm;
  readonly move: Move;
  readonly at: number;
  /** Index into the arm's parts and into the mic's solids. */
  readonly part: number;
  readonly solid: number;
}

/**
 * The smallest distance between a mic and everything the moves sweep (rule C1), by branch and bound: intervals of time that provably
 * hold nothing nearer are dropped, the others are halved. Nothing is missed by sampling. Two bounds are used, whichever is higher:
 * - plane: with n the direction from the mic to the part at one moment, every point of the part stays, along n, at or above the lower
 *   of its two end values less bend dt^2 / 8 (for the elbow: their mean less its way / 2); the mic's own farthest point along n is known;
 * - way: the axes' distance changes at most as fast as the part's fastest point.
 */
export class MoveSearch {
  private readonly gap = new SegmentGap();
  private readonly pool: readonly Float64Array[] = Array.from(
    { length: DEEPEST },
    () => new Float64Array(POSITION),
  );
  private readonly swept: SweptMoves;
  private shape: MicShape;
  private best: Mm = 0;
  private found: NearestMoment | undefined;
  private boxed: BoxedMove | undefined;
  private part = 0;
  private solid = 0;

  constructor(swept: SweptMoves, shape: MicShape) {
    this.swept = swept;
    this.shape = shape;
  }

  /**
   * Nearest moment below `limit` mm; undefined when all moves stay at or above it (less TOLERANCE). `shapes` holds the mic in the hand
   * space of the right and of the left side.
   */
  nearest(
    shapes: { readonly right: MicShape; readonly left: MicShape },
    limit: Mm,
  ): NearestMoment | undefined {
    this.best = limit;
    this.found = undefined;
    const { moves, moveBoxes } = this.swept;
    for (const [index, boxed] of moves.entries()) {
      this.shape = shapes[boxed.move.side];
      const whole = this.shape.count * BOX;
      if (this.apart(moveBoxes, index * BOX, whole) < this.best - TOLERANCE) {
        this.boxed = boxed;
        this.searchMove(boxed, whole);
      }
    }
    return this.found;
  }

  /** What boxes say: nothing inside is nearer than their gap; nothing at all where they meet. */
  private apart(boxes: Float64Array, i: number, k: number): Mm {
    const gap = boxGap(boxes, i, this.shape.boxes, k);
    return gap > 0 ? gap : Number.NEGATIVE_INFINITY;
  }

  private searchMove(boxed: BoxedMove, whole: number): void {
    const { boxes } = this.swept;
    for (let i = 0; i < boxed.intervals; i++) {
      for (let part = 0; part < PARTS; part++) {
        const box = boxed.box + (i * PARTS + part) * BOX;
        if (this.apart(boxes, box, whole) >= this.best - TOLERANCE) continue;
        for (let solid = 0; solid < this.shape.count; solid++) {
          if (this.apart(boxes, box, solid * BOX) < this.best - TOLERANCE) {
            this.part = part;
            this.solid = solid;
            this.searchInterval(boxed, i);
          }
        }
      }
    }
  }

  private searchInterval(boxed: BoxedMove, i: number): void {
    const { positions } = this.swept;
    const from = boxed.position + i * POSITION;
    const start = positions.subarray(from, from + POSITION);
    const end = positions.subarray(from + POSITION, from + 2 * POSITION);
    const t = i / boxed.intervals;
    const dt = 1 / boxed.intervals;
    const first = this.measure(start, t);
    if (this.planeBound(start, end, dt) >= this.best - TOLERANCE) return;
    const last = this.measure(end, t + dt);
    if (this.planeBound(start, end, dt) >= this.best - TOLERANCE) return;
    if (this.wayBound(first + last, dt) >= this.best - TOLERANCE) return;
    this.halve({ start, end, t, dt, first, last }, 0);
  }

  private halve(span: Span, depth: number): void {
    const middle = this.pool[depth];
    if (!middle || !this.boxed || span.dt < MOMENT) return;
    const dt = span.dt / 2;
    const t = span.t + dt;
    this.boxed.move.write(t, middle);
    const distance = this.measure(middle, t);
    const lower = this.planeBound(span.start, middle, dt);
    const upper = this.planeBound(middle, span.end, dt);
    const low = Math.max(lower, this.wayBound(span.first + distance, dt));
    const high = Math.max(upper, this.wayBound(distance + span.last, dt));
    const before = { ...span, end: middle, dt, last: distance };
    const after = { ...span, start: middle, t, dt, first: distance };
    // The more promising half first, so that the other is more often dropped.
    if (low <= high) {
      if (low < this.best - TOLERANCE) this.halve(before, depth + 1);
      if (high < this.best - TOLERANCE) this.halve(after, depth + 1);
    } else {
      if (high < this.best - TOLERANCE) this.halve(after, depth + 1);
      if (low < this.best - TOLERANCE) this.halve(before, depth + 1);
    }
  }

  private partAt(): { readonly at: number; readonly radius: Mm } {
    return this.swept.arm.parts[this.part] as { readonly at: number; readonly radius: Mm };
  }

  private radii(): Mm {
    return this.partAt().radius + (this.shape.radii[this.solid] as number);
  }

  /** Distance between the axes at one moment; keeps the moment when it is the nearest so far. */
  private measure(position: Float64Array, t: number): Mm {
    const distance = this.gap.measure(this.shape.axes, this.solid * 6, position, this.partAt().at);
    const clearance = distance - this.radii();
    if (clearance < this.best && this.boxed) {
      this.best = clearance;
      const { move } = this.boxed;
      this.found = { clearance, move, at: t, part: this.part, solid: this.solid };
    }
    return distance;
  }

  private wayBound(twiceMean: Mm, dt: number): Mm {
    const { speed } = (this.boxed as BoxedMove).move;
    if (this.part === 2) return -this.radii();
    const fastest = this.part === 0 ? Math.max(speed.butt, speed.tip) : speed.grip;
    return Math.max(0, (twiceMean - fastest * dt) / 2) - this.radii();
  }

  private planeBound(start: Float64Array, end: Float64Array, dt: number): Mm {
    const { gap, shape } = this;
    if (gap.distance < CROSSING) return Number.NEGATIVE_INFINITY;
    const nx = gap.dx / gap.distance;
    const ny = gap.dy / gap.distance;
    const nz = gap.dz / gap.distance;
    const m = shape.axes;
    const k = this.solid * 6;
    const reach = (row: Float64Array, i: number): number =>
      nx * (row[i] as number) + ny * (row[i + 1] as number) + nz * (row[i + 2] as number);
    const micSide = Math.max(reach(m, k), reach(m, k + 3));
    const { at } = this.partAt();
    const { bend, speed } = (this.boxed as BoxedMove).move;
    const bow = (dt * dt) / 8;
    const far = Math.min(reach(start, at + 3), reach(end, at + 3));
    let part: number;
    if (this.part === 2) {
      const room = speed.grip * dt;
      const way = this.swept.arm.elbowRate(start, room) * room;
      const elbow = (reach(start, at) + reach(end, at)) / 2;
      part = Math.min(
        far - bend.grip * bow,
        elbow - Math.min(way / 2, 2 * this.swept.arm.upper + room),
      );
    } else {
      const near = Math.min(reach(start, at), reach(end, at));
      part =
        this.part === 0
          ? Math.min(near - bend.butt * bow, far - bend.tip * bow)
          : near - bend.grip * bow;
    }
    return part - micSide - this.radii();
  }
}

/** A stretch of one move's time with the positions at its ends and the axes' distances there. */
interface Span {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly t: number;
  readonly dt: number;
  readonly first: Mm;
  readonly last: Mm;
}
