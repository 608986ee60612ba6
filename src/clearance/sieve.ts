import { type Circle, comesNearCircle } from '../geometry/circleGap.ts';
import { SegmentGap } from '../geometry/segments.ts';
import { distance, type Vec3, vec } from '../geometry/vector.ts';
import { type ArmPart, POSITION } from '../player/arm.ts';
import type { Mm } from '../units/quantity.ts';
import type { Motion } from './micClearance.ts';
import { type MicPose, squaredToPoint } from './micPose.ts';
import { BOWS, MoveStretches, PIECES, partOf, stretchOf } from './moveStretches.ts';
import { driftBound, type Finding, type Question } from './question.ts';
import { StillThings } from './stillThings.ts';
import type { SweptMoves } from './sweptMoves.ts';

/** Indices into the arm's parts. */
const HAND = 1;
const FOREARM = 2;
/** Axes nearer than this cross: they have no direction between them. */
const CROSSING: Mm = 1e-9;
/** Pieces with more slack than this many times the room are halved; with less room than this share of the mic's size its solids are told apart. */
const LOOSEST = 2;
const TIGHT = 0.4;
const NARROW = 0.4;
/** Pieces with more slack are halved before they are sorted by where they are near. */
const COARSE: Mm = 40;

/**
 * Sorts out what of all that moves matters to a mic near a pose. Rule C4: a clearance changes at most as fast as the fastest
 * point of the mic. So what is farther off than threshold and room together matters to none of the poses in the room, and what
 * is nearer than the threshold by more than the room rules out all of them. What is left is looked at again for a part of the poses.
 */
export class Sieve {
  private readonly stretches: MoveStretches;
  private readonly swept: SweptMoves;
  private readonly parts: readonly ArmPart[];
  private readonly still: StillThings;
  private readonly gap = new SegmentGap();
  private readonly stack = new Int32Array(128);
  private kept = new Int32Array(1024);
  /** Pieces looked at so far: what the work done can be told by. */
  looked = 0;
  private count = 0;
  /** Bounds on the clearances last measured. */
  private low: Mm = 0;
  private high: Mm = 0;
  /** The clearance last measured, to the middle of the piece. */
  private middle: Mm = 0;

  constructor(motion: Motion) {
    this.swept = motion.swept;
    this.stretches = MoveStretches.shared(motion.swept.arm);
    this.parts = motion.swept.arm.parts;
    this.still = new StillThings(motion);
  }

  /** All moves: the list to start with. */
  all(): Int32Array {
    return this.stretches.whole(this.swept);
  }

  /** What of all that moves may come within `limit` mm of a circle, in pieces that are not too coarse: a list to start with for poses there. */
  near(circle: Circle, limit: Mm): Int32Array {
    const { stack, stretches } = this;
    const found: number[] = [];
    for (const whole of this.all()) {
      let open = 0;
      stack[open++] = whole;
      while (open > 0) {
        const piece = stack[--open] as number;
        this.looked++;
        if (!this.meetsCircle(circle, piece, limit)) continue;
        if ((stretches.slack[piece] as number) <= COARSE) {
          found.push(piece);
          continue;
        }
        const half = stretches.halved(piece);
        stack[open++] = half + PIECES;
        stack[open++] = half;
      }
    }
    return Int32Array.from(found);
  }

  private meetsCircle(circle: Circle, piece: number, limit: Mm): boolean {
    const { slack, middles } = this.stretches;
    const { at, radius } = this.parts[partOf(piece)] as ArmPart;
    const axis = stretchOf(piece) * POSITION + at;
    return comesNearCircle(circle, middles, axis, limit + radius + (slack[piece] as number));
  }

  /** For each of a row of points what of a list may come within `limit` mm of it. */
  nearEach(points: readonly Vec3[], limit: Mm, list: Int32Array): readonly Int32Array[] {
    const found: number[][] = points.map(() => []);
    const strides = points.slice(1).map((point, k) => distance(point, points[k] ?? point));
    const longest = Math.max(...strides);
    const { slack, middles } = this.stretches;
    for (const piece of list) {
      const { at, radius } = this.parts[partOf(piece)] as ArmPart;
      const near = limit + radius + (slack[piece] as number);
      const axis = stretchOf(piece) * POSITION + at;
      for (let k = 0; k < points.length; ) {
        const far = Math.sqrt(squaredToPoint(middles, axis, points[k] as Vec3)) - near;
        if (far < 0) found[k]?.push(piece);
        // What is far from one point is not near the next few either.
        k += Math.max(1, Math.floor(far / longest));
      }
    }
    return found.map((pieces) => Int32Array.from(pieces));
  }

  /** What was left by the last question, when it was open: the list to go on with for any part of its poses. */
  rest(): Int32Array {
    return this.kept.slice(0, this.count);
  }

  /** Answers a question about the poses near one. The list holds every piece that may matter to them; what ends the search comes first next time. */
  ask(pose: MicPose, question: Question, list: Int32Array): Finding {
    this.count = 0;
    const still = this.still.ask(pose, question);
    if (still === 'below') return still;
    for (let i = 0; i < list.length; i++) {
      const piece = list[i] as number;
      if (!this.isBelow(pose, question, piece)) continue;
      list[i] = list[0] as number;
      list[0] = piece;
      return 'below';
    }
    return this.count > 0 ? 'open' : still;
  }

  /** Whether a piece comes nearer than the threshold to all poses; keeps what of it may come as near to some. */
  private isBelow(pose: MicPose, question: Question, whole: number): boolean {
    const { stack, stretches } = this;
    const { threshold, room, tolerance } = question;
    let open = 0;
    stack[open++] = whole;
    // A ball round one solid is no help: it is measured at once.
    const alone = pose.radii.length === 1;
    while (open > 0) {
      const piece = stack[--open] as number;
      this.looked++;
      if (!alone && !this.meetsBall(pose, piece, threshold + room)) continue;
      this.middle = Number.POSITIVE_INFINITY;
      const enough = room === 0 || (stretches.slack[piece] as number) <= LOOSEST * room;
      if (alone || (enough && room < NARROW * pose.size)) {
        this.measure(pose, piece, question);
        if (this.high <= threshold) return true;
        if (this.low >= threshold) continue;
        if (room === 0 && this.high - this.low <= tolerance) return true;
      }
      if (enough && room > 0 && !this.mayRuleOut(piece, question)) {
        this.keep(piece);
        continue;
      }
      const half = stretches.halved(piece);
      stack[open++] = half + PIECES;
      stack[open++] = half;
    }
    return false;
  }

  /** Whether a piece last measured is so near in the middle that with less slack it might rule out all poses. */
  private mayRuleOut(piece: number, { threshold, room, drift }: Question): boolean {
    const slack = this.stretches.slack[piece] as number;
    return drift !== undefined && this.middle < threshold && slack > TIGHT * room;
  }

  private keep(piece: number): void {
    if (this.count === this.kept.length) {
      const longer = new Int32Array(2 * this.count);
      longer.set(this.kept);
      this.kept = longer;
    }
    this.kept[this.count++] = piece;
  }

  /** Whether what a piece sweeps may come nearer than `limit` to the ball round the mic. */
  private meetsBall({ centre, size }: MicPose, piece: number, limit: Mm): boolean {
    const { slack, middles } = this.stretches;
    const { at, radius } = this.parts[partOf(piece)] as ArmPart;
    const near = size + radius + (slack[piece] as number) + limit;
    const axis = stretchOf(piece) * POSITION + at;
    return near > 0 && squaredToPoint(middles, axis, centre) < near * near;
  }

  /** Bounds on the clearances of all poses to a piece; those known to be at or above the threshold are bounded no better. */
  private measure({ axes, radii }: MicPose, piece: number, question: Question): void {
    const { threshold, rooms, drift } = question;
    const stretch = stretchOf(piece);
    const part = partOf(piece);
    const { at, radius } = this.parts[part] as ArmPart;
    const slack = this.stretches.slack[piece] as number;
    const axis = stretch * POSITION + at;
    this.low = Number.POSITIVE_INFINITY;
    this.high = Number.POSITIVE_INFINITY;
    for (let solid = 0; solid < radii.length; solid++) {
      const both = radius + (radii[solid] as number);
      const room = rooms[solid] as number;
      const clearance = this.gap.measure(axes, solid * 6, this.stretches.middles, axis) - both;
      let most = clearance + slack + room;
      if (clearance < this.middle) this.middle = clearance;
      if (drift && clearance + slack <= threshold && most > threshold) {
        const { s, dx, dy, dz } = this.gap;
        const bound = driftBound(drift, { solid, s, room }, vec(dx, dy, dz), both - slack);
        if (bound < most) most = bound;
      }
      let least = clearance - slack - room;
      if (most < this.high) this.high = most;
      if (least < threshold) {
        const bound = this.planeBound(axes, solid * 6, stretch, part) - both - room;
        if (bound > least) least = bound;
      }
      if (least < this.low) this.low = least;
    }
  }

  /**
   * The plane bound (rule C1) across the gap last measured: along it, every end of the part's axis stays at or above the lower of its places at both
   * ends of the stretch less its bow (the elbow: its place in the middle less its room); the solid ends where its farther end does.
   */
  private planeBound(axes: Float64Array, solid: number, stretch: number, part: number): Mm {
    if (this.gap.distance < CROSSING) return Number.NEGATIVE_INFINITY;
    const { middles, positions, starts, ends, bows } = this.stretches;
    const { at } = this.parts[part] as ArmPart;
    const start = (starts[stretch] as number) + at;
    const end = (ends[stretch] as number) + at;
    const bow = stretch * BOWS;
    const micSide = Math.max(this.along(axes, solid), this.along(axes, solid + 3));
    const far = Math.min(this.along(positions, start + 3), this.along(positions, end + 3));
    if (part === FOREARM) {
      const elbow = this.along(middles, stretch * POSITION + at) - (bows[bow + 3] as number);
      return Math.min(elbow, far - (bows[bow + 2] as number)) - micSide;
    }
    if (part === HAND) return far - (bows[bow + 2] as number) - micSide;
    const butt = Math.min(this.along(positions, start), this.along(positions, end));
    return Math.min(butt - (bows[bow] as number), far - (bows[bow + 1] as number)) - micSide;
  }

  /** How far a point lies in the direction of the gap last measured. */
  private along(p: Float64Array, i: number): Mm {
    const { dx, dy, dz, distance } = this.gap;
    return (
      ((p[i] as number) * dx + (p[i + 1] as number) * dy + (p[i + 2] as number) * dz) / distance
    );
  }
}
