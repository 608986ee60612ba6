import { SegmentGap } from '../geometry/segments.ts';
import { type Arm, type ArmPart, POSITION } from '../player/arm.ts';
import type { Mm } from '../units/quantity.ts';
import { type MicPose, squaredToPoint } from './micPose.ts';
import { MoveStretches, PIECES, partOf, stretchOf } from './moveStretches.ts';
import { type SquareGrid, TOP } from './squareGrid.ts';
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
  /** Of each part and the thickest of the mic's solids the radii together: no clearance is below minus that. */
  private readonly thickest: Float64Array;
  private readonly shifts = { leastX: 0, leastY: 0, mostX: 0, mostY: 0 };
  /** Half the diagonal of the square looked at, and the middle of the mic shifted to its middle. */
  private room: Mm = 0;
  private readonly shifted: { x: Mm; y: Mm; readonly z: Mm };
  /** The solid last found to be nearest. */
  private nearest = 0;

  constructor(to: ShiftGrid, arm: Arm, mic: MicPose) {
    this.to = to;
    this.mic = mic;
    this.shifted = { ...mic.centre };
    this.parts = arm.parts;
    const most = Math.max(...mic.radii);
    this.thickest = Float64Array.from(arm.parts, ({ radius }) => radius + most);
    // Its own: so many are needed that those that questions about mics share would be crowded out.
    this.stretches = new MoveStretches(arm);
  }

  paint(swept: SweptMoves): void {
    for (const piece of this.stretches.whole(swept)) this.paintPiece(piece);
  }

  private paintPiece(piece: number): void {
    const { stretches, shifts } = this;
    const { grid, cell, left, bottom } = this.to;
    if (!this.findShifts(piece)) return;
    if ((stretches.slack[piece] as number) > COARSE) {
      const half = stretches.halved(piece);
      this.paintPiece(half);
      this.paintPiece(half + PIECES);
      return;
    }
    const side = cell * 2 ** TOP;
    const first = (at: Mm): number => Math.max(0, Math.floor(at / side));
    const last = (at: Mm, count: number): number => Math.min(count - 1, Math.floor(at / side));
    const lastRow = last(shifts.mostY - bottom, grid.rows);
    const firstColumn = first(shifts.leastX - left);
    const lastColumn = last(shifts.mostX - left, grid.columns);
    for (let row = first(shifts.leastY - bottom); row <= lastRow; row++) {
      for (let column = firstColumn; column <= lastColumn; column++) {
        this.paintSquare(piece, TOP, column, row);
      }
    }
  }

  /** By how much the mic must be shifted on the plan so that what a piece sweeps may touch it, into `shifts`; false where no shift does. */
  private findShifts(piece: number): boolean {
    const { shifts } = this;
    const { centre } = this.mic;
    const { middles } = this.stretches;
    const near = this.reachOf(piece);
    const at = this.axisOf(piece);
    const az = middles[at + 2] as number;
    const bz = middles[at + 5] as number;
    if (Math.min(az, bz) - near > centre.z || Math.max(az, bz) + near < centre.z) return false;
    const ax = middles[at] as number;
    const ay = middles[at + 1] as number;
    const bx = middles[at + 3] as number;
    const by = middles[at + 4] as number;
    shifts.leastX = Math.min(ax, bx) - near - centre.x;
    shifts.leastY = Math.min(ay, by) - near - centre.y;
    shifts.mostX = Math.max(ax, bx) + near - centre.x;
    shifts.mostY = Math.max(ay, by) + near - centre.y;
    return true;
  }

  /** How far from the axis in the middle of a piece the mic's own middle is at most where they touch. */
  private reachOf(piece: number): Mm {
    const { radius } = this.parts[partOf(piece)] as ArmPart;
    return this.mic.size + radius + (this.stretches.slack[piece] as number);
  }

  private axisOf(piece: number): number {
    return stretchOf(piece) * POSITION + (this.parts[partOf(piece)] as ArmPart).at;
  }

  /** Marks what a piece strikes in a square. Clearance changes at most as fast as the mic moves (rule C4). Asked most often: without objects. */
  private paintSquare(piece: number, level: number, column: number, row: number): void {
    const { grid, cell, tolerance, left, bottom } = this.to;
    if (grid.isFullAt(level, column, row)) return;
    const side = cell * 2 ** level;
    const room = side * Math.SQRT1_2;
    const slack = this.stretches.slack[piece] as number;
    const { gap } = this;
    gap.shiftX = left + (column + 0.5) * side;
    gap.shiftY = bottom + (row + 0.5) * side;
    this.room = room;
    if (!this.isNear(piece)) return;
    // A last cell is struck by whatever comes near enough to its middle; a larger square only when it is struck whole.
    const struck = (level === 0 ? room : -room) - slack;
    // No clearance is as low as that of two axes that cross: mostly too high for a larger square to be struck whole.
    const enough = struck < -(this.thickest[partOf(piece)] as number) ? room + slack : struck;
    const clearance = this.clearance(piece, enough);
    if (clearance >= room + slack) return;
    if (clearance <= struck) grid.mark({ level, column, row });
    else if (level === 0 && 2 * slack <= tolerance) grid.mark({ level, column, row });
    else if (level > 0 && slack <= room) {
      const finer = level - 1;
      this.paintSquare(piece, finer, 2 * column, 2 * row);
      this.paintSquare(piece, finer, 2 * column + 1, 2 * row);
      this.paintSquare(piece, finer, 2 * column, 2 * row + 1);
      this.paintSquare(piece, finer, 2 * column + 1, 2 * row + 1);
    } else {
      const half = this.stretches.halved(piece);
      this.paintSquare(half, level, column, row);
      this.paintSquare(half + PIECES, level, column, row);
    }
  }

  /** Whether what a piece sweeps may come within the room of the square of the ball round the shifted mic. */
  private isNear(piece: number): boolean {
    const { gap, shifted } = this;
    const { x, y } = this.mic.centre;
    const near = this.reachOf(piece) + this.room;
    shifted.x = x + gap.shiftX;
    shifted.y = y + gap.shiftY;
    return squaredToPoint(this.stretches.middles, this.axisOf(piece), shifted) < near * near;
  }

  /** The clearance of the shifted mic to the middle of a piece; what is below `enough` may be lower still. The solid last found near comes first. */
  private clearance(piece: number, enough: Mm): Mm {
    const { gap, nearest } = this;
    const { axes, radii } = this.mic;
    const { middles } = this.stretches;
    const { radius } = this.parts[partOf(piece)] as ArmPart;
    const axis = this.axisOf(piece);
    const count = radii.length;
    let least = Number.POSITIVE_INFINITY;
    for (let turn = 0, solid = nearest; turn < count; turn++, solid++) {
      if (solid >= count) solid = 0;
      const apart = gap.measure(axes, solid * 6, middles, axis);
      const clearance = apart - radius - (radii[solid] as number);
      if (clearance >= least) continue;
      least = clearance;
      this.nearest = solid;
      if (least < enough) return least;
    }
    return least;
  }
}
