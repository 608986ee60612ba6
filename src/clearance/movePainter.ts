import { SegmentGap } from '../geometry/segments.ts';
import { type Vec2, vec } from '../geometry/vector.ts';
import { type Arm, type ArmPart, POSITION } from '../player/arm.ts';
import type { Mm } from '../units/quantity.ts';
import { type MicPose, squaredToPoint } from './micPose.ts';
import { MoveStretches, PIECES, partOf, stretchOf } from './moveStretches.ts';
import { quarters, type Square, type SquareGrid, TOP } from './squareGrid.ts';
import type { SweptMoves } from './sweptMoves.ts';

/** Stretches with more slack are halved before they are looked at square by square, mm. */
const COARSE: Mm = 80;

/** A grid of squares on the plan, over shifts of a mic. */
export interface ShiftGrid {
  readonly grid: SquareGrid;
  /** Side of the finest cell, mm. */
  readonly cell: Mm;
  /** By how much a clearance may be told too low, mm. */
  readonly tolerance: Mm;
  /** Corner of the grid as a shift of the mic, mm. */
  readonly left: Mm;
  readonly bottom: Mm;
}

/**
 * Marks where a mic would be struck by strokes and travels (rule Z1), one part in one stretch of a move after the other. A stretch is known as a capsule
 * with slack (rule C5): time is halved while the slack is more than a square's half diagonal, and the square is quartered while it is less. So what was
 * halved for a square is at hand for its quarters.
 */
export class MovePainter {
  private readonly to: ShiftGrid;
  private readonly mic: MicPose;
  private readonly parts: readonly ArmPart[];
  private readonly stretches: MoveStretches;
  private readonly gap = new SegmentGap();

  constructor(to: ShiftGrid, arm: Arm, mic: MicPose) {
    this.to = to;
    this.mic = mic;
    this.parts = arm.parts;
    // Its own: so many are needed that those that questions about mics share would be crowded out.
    this.stretches = new MoveStretches(arm);
  }

  paint(swept: SweptMoves): void {
    for (const piece of this.stretches.whole(swept)) this.paintPiece(piece);
  }

  private paintPiece(piece: number): void {
    const { stretches } = this;
    const { grid, cell, left, bottom } = this.to;
    const shifts = this.meetingShifts(piece);
    if (!shifts) return;
    if ((stretches.slack[piece] as number) > COARSE) {
      const half = stretches.halved(piece);
      this.paintPiece(half);
      this.paintPiece(half + PIECES);
      return;
    }
    const side = cell * 2 ** TOP;
    const first = (at: Mm): number => Math.max(0, Math.floor(at / side));
    const last = (at: Mm, count: number): number => Math.min(count - 1, Math.floor(at / side));
    const { least, most } = shifts;
    for (let row = first(least.y - bottom); row <= last(most.y - bottom, grid.rows); row++) {
      const end = last(most.x - left, grid.columns);
      for (let column = first(least.x - left); column <= end; column++) {
        this.paintSquare(piece, { level: TOP, column, row });
      }
    }
  }

  /** By how much the mic must be shifted on the plan so that what a piece sweeps may touch it: least and most; nothing where no shift does. */
  private meetingShifts(piece: number): { readonly least: Vec2; readonly most: Vec2 } | undefined {
    const { centre } = this.mic;
    const { middles } = this.stretches;
    const near = this.reachOf(piece);
    const at = this.axisOf(piece);
    const [ax = 0, ay = 0, az = 0, bx = 0, by = 0, bz = 0] = middles.subarray(at, at + 6);
    if (Math.min(az, bz) - near > centre.z || Math.max(az, bz) + near < centre.z) return undefined;
    return {
      least: { x: Math.min(ax, bx) - near - centre.x, y: Math.min(ay, by) - near - centre.y },
      most: { x: Math.max(ax, bx) + near - centre.x, y: Math.max(ay, by) + near - centre.y },
    };
  }

  /** How far from the axis in the middle of a piece the mic's own middle is at most where they touch. */
  private reachOf(piece: number): Mm {
    const { radius } = this.parts[partOf(piece)] as ArmPart;
    return this.mic.size + radius + (this.stretches.slack[piece] as number);
  }

  private axisOf(piece: number): number {
    return stretchOf(piece) * POSITION + (this.parts[partOf(piece)] as ArmPart).at;
  }

  /** Marks what a piece strikes in a square. Clearance changes at most as fast as the mic moves (rule C4). */
  private paintSquare(piece: number, square: Square): void {
    const { grid, cell, tolerance, left, bottom } = this.to;
    if (grid.isFull(square)) return;
    const { level } = square;
    const side = cell * 2 ** level;
    const room = side * Math.SQRT1_2;
    const slack = this.stretches.slack[piece] as number;
    const shift = {
      x: left + (square.column + 0.5) * side,
      y: bottom + (square.row + 0.5) * side,
    };
    if (!this.isNear(shift, piece, room)) return;
    const clearance = this.clearance(shift, piece);
    if (clearance >= room + slack) return;
    // A last cell is struck by whatever comes near enough to its middle; a larger square only when it is struck whole.
    if (clearance + slack <= (level === 0 ? room : -room)) grid.mark(square);
    else if (level === 0 && 2 * slack <= tolerance) grid.mark(square);
    else if (level > 0 && slack <= room) {
      for (const quarter of quarters(square)) this.paintSquare(piece, quarter);
    } else {
      const half = this.stretches.halved(piece);
      this.paintSquare(half, square);
      this.paintSquare(half + PIECES, square);
    }
  }

  /** Whether what a piece sweeps may come within `limit` mm of the ball round the shifted mic. */
  private isNear({ x, y }: Vec2, piece: number, limit: Mm): boolean {
    const { x: left, y: low, z } = this.mic.centre;
    const near = this.reachOf(piece) + limit;
    const centre = vec(left + x, low + y, z);
    return squaredToPoint(this.stretches.middles, this.axisOf(piece), centre) < near * near;
  }

  /** The clearance of the shifted mic to the middle of a piece. */
  private clearance({ x, y }: Vec2, piece: number): Mm {
    const { gap } = this;
    const { axes, radii } = this.mic;
    const { radius } = this.parts[partOf(piece)] as ArmPart;
    const axis = this.axisOf(piece);
    gap.shiftX = x;
    gap.shiftY = y;
    let least = Number.POSITIVE_INFINITY;
    for (let solid = 0; solid < radii.length; solid++) {
      const apart = gap.measure(axes, solid * 6, this.stretches.middles, axis);
      const clearance = apart - radius - (radii[solid] as number);
      if (clearance < least) least = clearance;
    }
    return least;
  }
}
