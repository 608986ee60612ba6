import { SegmentGap } from '../geometry/segments.ts';
import { type ArmPart, POSITION } from '../player/arm.ts';
import type { Move, PointBounds } from '../player/move.ts';
import type { Mm } from '../units/quantity.ts';
import { type MicShape, type MicShapes, squaredGap } from './micShape.ts';
import { PartingPlane } from './partingPlane.ts';
import { type Bounds, TOLERANCE } from './searchBounds.ts';
import {
  BOX,
  type BoxedMove,
  FOREARM,
  GROUP,
  HAND,
  PARTS,
  SCRATCH,
  STICK,
  type SweptMoves,
} from './sweptMoves.ts';

/** Axes nearer than this cross: they have no direction between them. */
const CROSSING = 1e-9;

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
 *   of its two end values less bend dt^2 / 8 (the elbow: less its bow, see elbowBow.ts); the mic's own farthest point along n is known;
 * - way: the axes' distance changes at most as fast as the part's fastest point.
 * The plane bound is tried on a whole move before its intervals are looked at, with the direction that kept the last one off (see
 * {@link PartingPlane}) and with that of the gap at its middle time: only where nothing of it can be nearer than the best so far, so that no result
 * depends on it.
 */
export class MoveSearch {
  private readonly swept: SweptMoves;
  private readonly shapes: MicShapes;
  private readonly plane: PartingPlane;
  private readonly gap = new SegmentGap();
  private shape: MicShape;
  private move: Move | undefined;
  private bend: PointBounds = { grip: 0, butt: 0, tip: 0 };
  private speed: PointBounds = this.bend;
  private part = 0;
  private solid = 0;
  private radii: Mm = 0;
  private segment = 0;
  /** Of the interval looked at: how long it is, how far its elbow may be from the straight way, and the time last measured at. */
  private dt = 0;
  private room: Mm = 0;
  private time = 0;
  /** Direction of the gap last measured. */
  private acrossX = 0;
  private acrossY = 0;
  private acrossZ = 0;
  private best: Mm = 0;
  /** Square of what boxes may be apart to hold something nearer, mm^2. */
  private nearSquared = 0;
  private tolerance: Mm = TOLERANCE;
  private enough: Mm = Number.NEGATIVE_INFINITY;
  private foundMove: Move | undefined;
  private foundAt = 0;
  private foundPart = 0;
  private foundSolid = 0;
  private foundClearance: Mm = 0;

  constructor(swept: SweptMoves, shapes: MicShapes) {
    this.swept = swept;
    this.shapes = shapes;
    this.plane = new PartingPlane(swept, shapes.right);
    this.shape = shapes.right;
  }

  /**
   * Nearest moment below `limit` mm; undefined when all moves stay at or above it (less TOLERANCE). The search ends early
   * when a moment at or below `enough` is found, whether or not it is the nearest.
   */
  nearest({ limit, enough, tolerance, moves }: Bounds): NearestMoment | undefined {
    this.enough = enough;
    this.tolerance = tolerance;
    this.improve(limit);
    this.foundMove = undefined;
    const { swept } = this;
    const count = moves ? moves.length : swept.moves.length;
    for (let i = 0; i < count && this.best > enough; i++) {
      const index = moves ? (moves[i] as number) : i;
      const boxed = swept.moves[index] as BoxedMove;
      this.shape = boxed.move.side === 'right' ? this.shapes.right : this.shapes.left;
      if (!this.isNear(swept.armBoxes, index * BOX, this.shape.count)) continue;
      this.take(boxed.move);
      this.plane.begin(boxed, this.shape);
      for (let part = 0; part < PARTS; part++) this.searchPart(boxed, index, part);
      this.plane.end(this.shape);
    }
    return this.found();
  }

  private found(): NearestMoment | undefined {
    const { foundMove, foundAt, foundPart, foundSolid, foundClearance } = this;
    return (
      foundMove && {
        clearance: foundClearance,
        move: foundMove,
        at: foundAt,
        part: foundPart,
        solid: foundSolid,
      }
    );
  }

  private take(move: Move): void {
    this.move = move;
    this.bend = move.bend;
    this.speed = move.speed;
  }

  /** Goes from the move's box through its groups' to its intervals', one of the mic's solids after the other. */
  private searchPart(boxed: BoxedMove, index: number, part: number): void {
    const { count, middle } = this.shape;
    const whole = (index * PARTS + part) * BOX;
    if (!this.mayMeet(part, whole, count)) return;
    for (let half = 0; half < 2; half++) {
      if (!this.mayMeet(part, whole, count + 1 + half)) continue;
      const end = half === 0 ? middle : count;
      for (let solid = half === 0 ? 0 : middle; solid < end; solid++) {
        if (!this.mayMeet(part, whole, solid)) continue;
        this.choose(part, solid);
        if (!this.staysOff(boxed)) this.searchSolid(boxed);
      }
    }
  }

  /** Whether a part, with its box over the whole move, may come nearer than the best so far to a solid or to several (the boxes after theirs). */
  private mayMeet(part: number, whole: number, solid: number): boolean {
    return (
      !this.plane.keeps(part, solid, this.best) && this.isNear(this.swept.moveBoxes, whole, solid)
    );
  }

  /** Whether the part keeps off the solid throughout the move, by the plane bound across the gap at its middle time. */
  private staysOff(boxed: BoxedMove): boolean {
    const { part, segment, radii } = this;
    const { positions } = this.swept;
    const middle = boxed.position + (boxed.intervals >> 1) * POSITION;
    this.gap.measure(this.shape.axes, this.solid * 6, positions, middle + segment);
    const gap = this.gap.distance - radii;
    if (gap < this.best || !this.lookAcross()) return false;
    this.plane.offer(gap, this.acrossX, this.acrossY, this.acrossZ);
    const bow = 1 / (8 * boxed.intervals * boxed.intervals);
    const least = this.best + radii + this.micAlong();
    const leastNear =
      least + this.nearBow(bow, part === FOREARM ? this.swept.mostElbowBow(boxed) : 0);
    const leastFar = least + this.farBow(bow);
    const end = boxed.position + (boxed.intervals + 1) * POSITION;
    for (let at = boxed.position + segment; at < end; at += POSITION) {
      if (this.along(positions, at) < leastNear) return false;
      if (part !== HAND && this.along(positions, at + 3) < leastFar) return false;
    }
    return true;
  }

  /** Goes through the boxes of a move's groups and intervals with the part and the solid chosen. */
  private searchSolid(boxed: BoxedMove): void {
    const { part, solid } = this;
    const { groupBoxes, boxes } = this.swept;
    const last = boxed.interval + boxed.intervals;
    for (let first = boxed.interval; first < last; first += GROUP) {
      if (!this.isNear(groupBoxes, ((first / GROUP) * PARTS + part) * BOX, solid)) continue;
      for (let k = first; k < first + GROUP; k++) {
        if (this.isNear(boxes, (k * PARTS + part) * BOX, solid)) {
          this.searchInterval(boxed, k - boxed.interval);
        }
      }
    }
  }

  /**
   * Whether one of the mic's solids, or any of them (the box after theirs), may be nearer to what is in a box than the best so far. Boxes that meet
   * say nothing of what they hold, which may overlap; others keep it at least their gap apart.
   */
  private isNear(boxes: Float64Array, box: number, solid: number): boolean {
    return squaredGap(boxes, box, this.shape.boxes, solid * BOX) <= this.nearSquared;
  }

  private improve(best: Mm): void {
    this.best = best;
    const near = best - this.tolerance;
    this.nearSquared = near > 0 ? near * near : 0;
  }

  private choose(part: number, solid: number): void {
    const { at, radius } = this.swept.arm.parts[part] as ArmPart;
    this.part = part;
    this.solid = solid;
    this.segment = at;
    this.radii = radius + (this.shape.radii[solid] as number);
  }

  private searchInterval(boxed: BoxedMove, i: number): void {
    const dt = 1 / boxed.intervals;
    const start = boxed.position + i * POSITION;
    const end = start + POSITION;
    this.dt = dt;
    this.room = this.swept.elbowBow[boxed.interval + i] as number;
    this.time = i * dt;
    this.measure(start);
    const first = this.gap.distance;
    if (this.planeDrops(start, end)) return;
    this.time = (i + 1) * dt;
    this.measure(end);
    const last = this.gap.distance;
    if (this.planeDrops(start, end)) return;
    if (this.wayBound(first + last) >= this.best - this.tolerance) return;
    const { halvings } = this.swept;
    halvings.starts[0] = start;
    halvings.ends[0] = end;
    halvings.times[0] = i * dt;
    halvings.firsts[0] = first;
    halvings.lasts[0] = last;
    this.halve(0, dt / 2);
  }

  /** Halves the interval kept at `depth` and goes on with the halves that may hold something nearer; `dt` is a half's length. */
  private halve(depth: number, dt: number): void {
    if (depth >= SCRATCH) return;
    const { swept } = this;
    const { halvings } = swept;
    const start = halvings.starts[depth] as number;
    const end = halvings.ends[depth] as number;
    const from = halvings.times[depth] as number;
    const middle = swept.scratch + depth * POSITION;
    this.dt = dt;
    this.time = from + dt;
    this.move?.write(this.time, swept.positions, middle);
    this.measure(middle);
    const { distance } = this.gap;
    const first = halvings.firsts[depth] as number;
    const last = halvings.lasts[depth] as number;
    this.room = this.elbowBow(start, middle);
    const before = Math.max(this.planeBound(start, middle), this.wayBound(first + distance));
    this.room = this.elbowBow(middle, end);
    const after = Math.max(this.planeBound(middle, end), this.wayBound(distance + last));
    // The more promising half first, so that the other is more often dropped.
    const beforeFirst = before <= after;
    for (let turn = 0; turn < 2; turn++) {
      const early = turn === 0 ? beforeFirst : !beforeFirst;
      if ((early ? before : after) >= this.best - this.tolerance) continue;
      halvings.starts[depth + 1] = early ? start : middle;
      halvings.ends[depth + 1] = early ? middle : end;
      halvings.times[depth + 1] = early ? from : from + dt;
      halvings.firsts[depth + 1] = early ? first : distance;
      halvings.lasts[depth + 1] = early ? distance : last;
      this.halve(depth + 1, dt / 2);
    }
  }

  private elbowBow(start: number, end: number): Mm {
    if (this.part !== FOREARM) return 0;
    const { dt } = this;
    const way = { room: this.speed.grip * dt, bend: this.bend.grip * dt * dt };
    return this.swept.arm.elbowBow(this.swept.positions, start, end, way);
  }

  /** Measures the gap between the axes at one moment; keeps the moment when it is the nearest so far. */
  private measure(position: number): void {
    this.gap.measure(
      this.shape.axes,
      this.solid * 6,
      this.swept.positions,
      position + this.segment,
    );
    const clearance = this.gap.distance - this.radii;
    if (clearance < this.best && this.move) {
      // Nothing is below minus infinity: once enough is known, every open interval is dropped.
      this.improve(clearance > this.enough ? clearance : Number.NEGATIVE_INFINITY);
      this.foundMove = this.move;
      this.foundAt = this.time;
      this.foundPart = this.part;
      this.foundSolid = this.solid;
      this.foundClearance = clearance;
    }
  }

  private wayBound(twiceMean: Mm): Mm {
    if (this.part === FOREARM) return -this.radii;
    const { butt, tip, grip } = this.speed;
    const fastest = this.part === STICK ? Math.max(butt, tip) : grip;
    return Math.max(0, (twiceMean - fastest * this.dt) / 2) - this.radii;
  }

  /** Whether an interval holds nothing nearer by the plane bound alone. */
  private planeDrops(start: number, end: number): boolean {
    return this.planeBound(start, end) >= this.best - this.tolerance;
  }

  /** The plane bound over an interval, across the gap last measured. */
  private planeBound(start: number, end: number): Mm {
    const { segment, part, dt } = this;
    if (!this.lookAcross()) return -this.radii;
    const p = this.swept.positions;
    const bow = (dt * dt) / 8;
    const first = this.along(p, start + segment);
    const last = this.along(p, end + segment);
    let low = (first < last ? first : last) - this.nearBow(bow, this.room);
    if (part !== HAND) {
      const farFirst = this.along(p, start + segment + 3);
      const farLast = this.along(p, end + segment + 3);
      const far = (farFirst < farLast ? farFirst : farLast) - this.farBow(bow);
      if (far < low) low = far;
    }
    return low - this.micAlong() - this.radii;
  }

  /** Takes the direction of the gap last measured; false where it has none. */
  private lookAcross(): boolean {
    const { gap } = this;
    const { distance } = gap;
    if (distance < CROSSING) return false;
    this.acrossX = gap.dx / distance;
    this.acrossY = gap.dy / distance;
    this.acrossZ = gap.dz / distance;
    return true;
  }

  /** How far the nearer end of the part may be from its straight way, by an interval's `bow` and the elbow's own. */
  private nearBow(bow: number, elbow: Mm): Mm {
    if (this.part === FOREARM) return elbow;
    return (this.part === STICK ? this.bend.butt : this.bend.grip) * bow;
  }

  private farBow(bow: number): Mm {
    return (this.part === STICK ? this.bend.tip : this.bend.grip) * bow;
  }

  /** How far the solid's axis reaches in that direction. */
  private micAlong(): Mm {
    const { axes } = this.shape;
    const a = this.along(axes, this.solid * 6);
    const b = this.along(axes, this.solid * 6 + 3);
    return a > b ? a : b;
  }

  /** How far a point lies in the direction of the gap last measured. */
  private along(p: Float64Array, i: number): Mm {
    return (
      (p[i] as number) * this.acrossX +
      (p[i + 1] as number) * this.acrossY +
      (p[i + 2] as number) * this.acrossZ
    );
  }
}
