import { SegmentGap } from '../geometry/segments.ts';
import type { Vec2 } from '../geometry/vector.ts';
import { type ArmPart, POSITION } from '../player/arm.ts';
import type { Move, PointBounds } from '../player/move.ts';
import type { Mm } from '../units/quantity.ts';
import { type MicShape, MOST_SOLIDS, squaredGap } from './micShape.ts';
import { entryInterval, entryMove, entryPart } from './neighbourhood.ts';
import { BOX, type BoxedMove, GROUP, PARTS, SCRATCH, type SweptMoves } from './sweptMoves.ts';

/**
 * Rule C2: the search stops where nothing left can be nearer by more than this, and what it reports is lowered by it: the clearance shown
 * is at or below the exact minimum of the model, by at most this many mm.
 */
export const TOLERANCE: Mm = 0.05;
/** Axes nearer than this cross: they have no direction between them. */
const CROSSING = 1e-9;
/** Indices into the arm's parts. */
const STICK = 0;
const HAND = 1;
const FOREARM = 2;

/** The set of all solids of a mic, a bit each. */
const ALL = 2 ** MOST_SOLIDS - 1;
/** Boxes that meet say nothing of what they hold, which may overlap; others keep it at least their gap apart. */
const near = (squared: number, limitSquared: number): boolean =>
  squared < limitSquared || squared === 0;

/** What a search found. `clearance` is that of the moment found: the exact minimum is at most TOLERANCE below. */
export interface NearestMoment {
  readonly clearance: Mm;
  readonly move: Move;
  readonly at: number;
  /** Index into the arm's parts and into the mic's solids. */
  readonly part: number;
  readonly solid: number;
}

/** What a search need not know (mm): clearances at or above `limit`, how far one is below `enough`, and differences up to `tolerance`. */
export interface Bounds {
  readonly limit: Mm;
  readonly enough: Mm;
  readonly tolerance: Mm;
  /** Codes of the only entries to look at (see neighbourhood.ts); all when not given. */
  readonly among?: Int32Array;
}

/** Everything is to be known, to within TOLERANCE. */
export const UNBOUNDED: Bounds = {
  limit: Number.POSITIVE_INFINITY,
  enough: Number.NEGATIVE_INFINITY,
  tolerance: TOLERANCE,
};

/** What ended one search is looked at first in the next, which is often about a place nearby. The order changes no answer, only its cost. */
function promote(among: Int32Array, index: number): void {
  const first = among[0];
  const found = among[index];
  if (first === undefined || found === undefined) return;
  among[0] = found;
  among[index] = first;
}

/** The mic in the hand space of each side. */
export interface MicShapes {
  readonly right: MicShape;
  readonly left: MicShape;
}

/**
 * The smallest distance between a mic and everything the moves sweep (rule C1), by branch and bound: intervals of time that provably
 * hold nothing nearer are dropped, the others are halved. Nothing is missed by sampling. Two bounds are used, whichever is higher:
 * - plane: with n the direction from the mic to the part at one moment, every point of the part stays, along n, at or above the lower
 *   of its two end values less bend dt^2 / 8 (for the elbow: less its room); the mic's own farthest point along n is known;
 * - way: the axes' distance changes at most as fast as the part's fastest point.
 */
export class MoveSearch {
  private readonly swept: SweptMoves;
  private shapes: MicShapes;
  private readonly gap = new SegmentGap();
  /** Per halving: offsets of the positions at both ends, their time and the axes' distances there. */
  private readonly starts = new Int32Array(SCRATCH + 1);
  private readonly ends = new Int32Array(SCRATCH + 1);
  private readonly times = new Float64Array(SCRATCH + 1);
  private readonly firsts = new Float64Array(SCRATCH + 1);
  private readonly lasts = new Float64Array(SCRATCH + 1);
  private shape: MicShape;
  private move: Move | undefined;
  private bend: PointBounds = { grip: 0, butt: 0, tip: 0 };
  private speed: PointBounds = this.bend;
  private part = 0;
  private solid = 0;
  private radii: Mm = 0;
  private segment = 0;
  private best: Mm = 0;
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
    this.shape = shapes.right;
  }

  /**
   * Nearest moment below `limit` mm; undefined when all moves stay at or above it (less TOLERANCE). The search ends early
   * when a moment at or below `enough` is found, whether or not it is the nearest.
   */
  nearest({ limit, enough, tolerance, among }: Bounds): NearestMoment | undefined {
    this.best = limit;
    this.enough = enough;
    this.tolerance = tolerance;
    this.foundMove = undefined;
    const { moves } = this.swept;
    if (among) {
      let i = 0;
      while (i < among.length && this.best > enough) this.searchEntry(among[i++] as number);
      if (this.best <= enough) promote(among, i - 1);
      return this.found();
    }
    for (let index = 0; index < moves.length && this.best > enough; index++) {
      const boxed = this.take(index);
      for (let part = 0; part < PARTS; part++) this.searchPart(boxed, index, part);
    }
    return this.found();
  }

  /** Goes on with the mic in another place. */
  hold(shapes: MicShapes): void {
    this.shapes = shapes;
  }

  /**
   * Whether the mic, moved by (dx, dy) on the plan, comes nearer than `limit` to one entry, as its clearance: at or above the limit when
   * not, else only as exact as the bounds ask.
   */
  entryAt(code: number, { x, y }: Vec2, { limit, enough, tolerance }: Bounds): Mm {
    const boxed = this.take(entryMove(code));
    this.best = limit;
    this.enough = enough;
    this.tolerance = tolerance;
    this.foundMove = undefined;
    this.gap.shiftX = boxed.move.side === 'right' ? x : -x;
    this.gap.shiftY = y;
    for (let solid = 0; solid < this.shape.count && this.best > enough; solid++) {
      this.choose(entryPart(code), solid);
      this.searchInterval(boxed, entryInterval(code));
    }
    this.gap.shiftX = 0;
    this.gap.shiftY = 0;
    return this.found()?.clearance ?? limit;
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

  private take(index: number): BoxedMove {
    const boxed = this.swept.moves[index] as BoxedMove;
    this.move = boxed.move;
    this.bend = boxed.move.bend;
    this.speed = boxed.move.speed;
    this.shape = this.shapes[boxed.move.side];
    return boxed;
  }

  private searchEntry(code: number): void {
    const boxed = this.take(entryMove(code));
    const k = entryInterval(code);
    const part = entryPart(code);
    const box = ((boxed.interval + k) * PARTS + part) * BOX;
    this.searchSolids(boxed, k, part, this.nearSolids(this.swept.boxes, box, ALL));
  }

  private searchSolids(boxed: BoxedMove, k: number, part: number, set: number): void {
    for (let solid = 0; set >> solid !== 0; solid++) {
      if ((set & (1 << solid)) === 0) continue;
      this.choose(part, solid);
      this.searchInterval(boxed, k);
    }
  }

  /** Goes from the move's box through its groups' to its intervals', with only those of the mic's solids that are still near enough. */
  private searchPart(boxed: BoxedMove, index: number, part: number): void {
    const { swept } = this;
    const inMove = this.nearSolids(swept.moveBoxes, (index * PARTS + part) * BOX, ALL);
    if (inMove === 0) return;
    for (let i = 0; i < boxed.intervals; i += GROUP) {
      const group = (boxed.interval + i) / GROUP;
      const inGroup = this.nearSolids(swept.groupBoxes, (group * PARTS + part) * BOX, inMove);
      for (let k = i; inGroup !== 0 && k < i + GROUP; k++) {
        const box = ((boxed.interval + k) * PARTS + part) * BOX;
        this.searchSolids(boxed, k, part, this.nearSolids(swept.boxes, box, inGroup));
      }
    }
  }

  /** Which of the solids in the set `among` (a bit each) may be nearer to what is in a box than the best so far. */
  private nearSolids(boxes: Float64Array, box: number, among: number): number {
    const { boxes: own, count } = this.shape;
    const limit = Math.max(0, this.best - this.tolerance);
    const limitSquared = limit * limit;
    if (!near(squaredGap(boxes, box, own, count * BOX), limitSquared)) return 0;
    let set = 0;
    for (let solid = 0; solid < count; solid++) {
      const bit = 1 << solid;
      if ((among & bit) === 0) continue;
      if (near(squaredGap(boxes, box, own, solid * BOX), limitSquared)) set |= bit;
    }
    return set;
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
    const room = this.swept.elbowRoom[boxed.interval + i] as number;
    const first = this.measure(start, i * dt);
    if (this.planeBound(start, end, dt, room) >= this.best - this.tolerance) return;
    const last = this.measure(end, (i + 1) * dt);
    if (this.planeBound(start, end, dt, room) >= this.best - this.tolerance) return;
    if (this.wayBound(first + last, dt) >= this.best - this.tolerance) return;
    this.starts[0] = start;
    this.ends[0] = end;
    this.times[0] = i * dt;
    this.firsts[0] = first;
    this.lasts[0] = last;
    this.halve(0, dt / 2);
  }

  /** Halves the interval kept at `depth` and goes on with the halves that may hold something nearer; `dt` is a half's length. */
  private halve(depth: number, dt: number): void {
    if (depth >= SCRATCH) return;
    const { swept } = this;
    const start = this.starts[depth] as number;
    const end = this.ends[depth] as number;
    const from = this.times[depth] as number;
    const middle = swept.scratch + depth * POSITION;
    this.move?.write(from + dt, swept.positions, middle);
    const distance = this.measure(middle, from + dt);
    const first = this.firsts[depth] as number;
    const last = this.lasts[depth] as number;
    const before = Math.max(
      this.planeBound(start, middle, dt, this.roomFrom(start, dt)),
      this.wayBound(first + distance, dt),
    );
    const after = Math.max(
      this.planeBound(middle, end, dt, this.roomFrom(middle, dt)),
      this.wayBound(distance + last, dt),
    );
    // The more promising half first, so that the other is more often dropped.
    const beforeFirst = before <= after;
    for (const early of [beforeFirst, !beforeFirst]) {
      if ((early ? before : after) >= this.best - this.tolerance) continue;
      this.starts[depth + 1] = early ? start : middle;
      this.ends[depth + 1] = early ? middle : end;
      this.times[depth + 1] = early ? from : from + dt;
      this.firsts[depth + 1] = early ? first : distance;
      this.lasts[depth + 1] = early ? distance : last;
      this.halve(depth + 1, dt / 2);
    }
  }

  private roomFrom(start: number, dt: number): Mm {
    if (this.part !== FOREARM) return 0;
    return this.swept.arm.elbowRoom(this.swept.positions, start, this.speed.grip * dt);
  }

  /** Distance between the axes at one moment; keeps the moment when it is the nearest so far. */
  private measure(position: number, t: number): Mm {
    const distance = this.gap.measure(
      this.shape.axes,
      this.solid * 6,
      this.swept.positions,
      position + this.segment,
    );
    const clearance = distance - this.radii;
    if (clearance < this.best && this.move) {
      // Nothing is below minus infinity: once enough is known, every open interval is dropped.
      this.best = clearance > this.enough ? clearance : Number.NEGATIVE_INFINITY;
      this.foundMove = this.move;
      this.foundAt = t;
      this.foundPart = this.part;
      this.foundSolid = this.solid;
      this.foundClearance = clearance;
    }
    return distance;
  }

  private wayBound(twiceMean: Mm, dt: number): Mm {
    if (this.part === FOREARM) return -this.radii;
    const { butt, tip, grip } = this.speed;
    const fastest = this.part === STICK ? Math.max(butt, tip) : grip;
    return Math.max(0, (twiceMean - fastest * dt) / 2) - this.radii;
  }

  /** The plane bound over an interval, across the gap last measured; `room` is the elbow's. */
  private planeBound(start: number, end: number, dt: number, room: Mm): Mm {
    const { gap, shape, segment, bend } = this;
    const { distance } = gap;
    if (distance < CROSSING) return -this.radii;
    const p = this.swept.positions;
    const shift = (gap.dx * gap.shiftX + gap.dy * gap.shiftY) / distance;
    const micSide =
      shift +
      Math.max(this.along(shape.axes, this.solid * 6), this.along(shape.axes, this.solid * 6 + 3));
    const near = start + segment;
    const nearLow = Math.min(this.along(p, near), this.along(p, end + segment));
    if (this.part === HAND) return nearLow - (bend.grip * dt * dt) / 8 - micSide - this.radii;
    const farLow = Math.min(this.along(p, near + 3), this.along(p, end + segment + 3));
    const bow = (dt * dt) / 8;
    const low =
      this.part === STICK
        ? Math.min(nearLow - bend.butt * bow, farLow - bend.tip * bow)
        : Math.min(nearLow - room, farLow - bend.grip * bow);
    return low - micSide - this.radii;
  }

  /** How far a point lies in the direction of the gap last measured. */
  private along(p: Float64Array, i: number): Mm {
    const { dx, dy, dz, distance } = this.gap;
    return (
      ((p[i] as number) * dx + (p[i + 1] as number) * dy + (p[i + 2] as number) * dz) / distance
    );
  }
}
