import type { Mm } from '../units/quantity.ts';
import { type AxisField, TILE } from './axisField.ts';
import { ballDepth } from './ballDepth.ts';
import type { FloorBall } from './floorBudget.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import { lowestFirst } from './lowestFirst.ts';
import { isSmall, lowerToSmallBalls } from './smallBalls.ts';

/**
 * Lowers a field of spots to the under sides of balls about the places of axes, radius by radius (rule F3). Of every tile of spots the highest height
 * is known: what none of the balls of another tile comes down to is passed over.
 */
export class BallsBelow {
  private readonly floor: StickFloor;
  private readonly axes: AxisField;
  /** The highest height over each tile; minus infinite where it has no spot. */
  private readonly roofs: Float32Array;
  /** Farthest that a ball reaches: so many tiles to any side. */
  private reach = 0;
  /** By how much the places are lowered, mm. */
  private lowered = 0;
  /** How far a ball comes down from its middle, by how many cells a spot is ahead and aside of it, from -`half` to `half`; minus infinite beyond it. */
  private depths = new Float64Array();
  private half = 0;
  /** The spots of the tile looked at, from the first to before the end in either direction. */
  private left = 0;
  private right = 0;
  private low = 0;
  private high = 0;

  constructor(floor: StickFloor, axes: AxisField) {
    this.floor = floor;
    this.axes = axes;
    this.roofs = new Float32Array(axes.columns * axes.rows);
    this.keepRoofs();
  }

  /** Says to the axes from which heights on balls of a radius would lower nothing. */
  sayCeilings({ radius, grown, reach: far, lowered }: FloorBall): void {
    const { columns, ceilings } = this.axes;
    const reach = Math.ceil(far / SPOT / TILE);
    const about = highestAbout(highestAbout(this.roofs, reach, 1), reach, columns);
    for (let tile = 0; tile < about.length; tile++) {
      ceilings[tile] = (about[tile] as number) + radius + grown + lowered;
    }
  }

  /** Lowers the field to balls of a radius about all places that the axes were seen at. */
  lower(ball: FloorBall): void {
    if (isSmall(ball)) {
      lowerToSmallBalls(this.floor, this.axes, ball);
      this.keepRoofs();
      return;
    }
    this.findDepths(ball);
    const { seen } = this.axes;
    const bottoms = new Float64Array(seen.length).fill(Number.POSITIVE_INFINITY);
    for (let tile = 0; tile < seen.length; tile++) {
      if (seen[tile] === 1) bottoms[tile] = this.bottom(tile);
    }
    // The lowest first: the others then have less to lower.
    for (const tile of lowestFirst(bottoms)) this.spread(tile, bottoms[tile] as number);
  }

  private findDepths(ball: FloorBall): void {
    this.lowered = ball.lowered;
    this.reach = Math.ceil(ball.reach / SPOT / TILE);
    const half = (this.reach + 1) * TILE;
    const side = 2 * half + 1;
    this.half = half;
    this.depths = new Float64Array(side * side);
    for (let j = 0; j < side; j++) {
      for (let i = 0; i < side; i++) {
        // From the nearest point of one cell to the nearest of the other.
        const across = Math.max(0, Math.abs(i - half) - 1);
        const ahead = Math.max(0, Math.abs(j - half) - 1);
        this.depths[j * side + i] = ballDepth(ball, across, ahead);
      }
    }
  }

  private bottom(tile: number): Mm {
    const { across, columns, lowest } = this.axes;
    const row = Math.floor(tile / columns);
    let at = row * TILE * across + (tile - row * columns) * TILE;
    let bottom = Number.POSITIVE_INFINITY;
    for (let line = 0; line < TILE; line++) {
      for (let cell = at; cell < at + TILE; cell++) {
        const height = lowest[cell] as number;
        if (height < bottom) bottom = height;
      }
      at += across;
    }
    return bottom;
  }

  /** Lowers all tiles of spots that balls about the places in one tile, none below `lowest`, may come down to. */
  private spread(tile: number, lowest: Mm): void {
    const { axes, half, reach, depths, roofs } = this;
    const { columns, rows } = axes;
    const row = Math.floor(tile / columns);
    const column = tile - row * columns;
    const bottom = lowest - this.lowered;
    const right = Math.min(columns - 1, column + reach);
    for (let r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
      const ahead = (half + cellsApart(r, row)) * (2 * half + 1) + half;
      for (let c = Math.max(0, column - reach); c <= right; c++) {
        const depth = depths[ahead + cellsApart(c, column)] as number;
        const at = r * columns + c;
        if (bottom - depth >= (roofs[at] as number)) continue;
        this.take(r, c);
        this.lowerTile(tile, at);
        roofs[at] = this.roof();
      }
    }
  }

  /** Lowers the spots of the tile taken, `to`, to balls about the places in another tile. */
  private lowerTile(from: number, to: number): void {
    const { axes, half, depths, lowered } = this;
    const { across, columns, lowest } = axes;
    const side = 2 * half + 1;
    const roof = this.roofs[to] as number;
    const r = Math.floor(to / columns) * TILE;
    const c = (to % columns) * TILE;
    const row = Math.floor(from / columns) * TILE;
    const column = (from % columns) * TILE;
    for (let j = row; j < row + TILE; j++) {
      const ahead = (half + cellsTo(j, r)) * side + half;
      for (let i = column; i < column + TILE; i++) {
        const height = (lowest[j * across + i] as number) - lowered;
        if (height - (depths[ahead + cellsTo(i, c)] as number) < roof)
          this.lowerSpots(height, i, j);
      }
    }
  }

  /** Lowers the spots of the tile taken to a ball about a height over a cell. */
  private lowerSpots(height: Mm, column: number, row: number): void {
    const { axes, half, depths, left, right, high } = this;
    const { columns, heights } = this.floor;
    const middle = half + axes.border;
    for (let y = this.low; y < high; y++) {
      const line = (middle + y - row) * (2 * half + 1) + middle - column;
      for (let x = left; x < right; x++) {
        const under = height - (depths[line + x] as number);
        if (under < (heights[y * columns + x] as number)) heights[y * columns + x] = under;
      }
    }
  }

  /** Takes the spots of a tile. */
  private take(row: number, column: number): void {
    const { border } = this.axes;
    const left = column * TILE - border;
    const low = row * TILE - border;
    this.left = Math.max(0, left);
    this.right = Math.min(this.floor.columns, left + TILE);
    this.low = Math.max(0, low);
    this.high = Math.min(this.floor.rows, low + TILE);
  }

  /** The highest of the spots of the tile taken. */
  private roof(): Mm {
    const { left, right, high } = this;
    const { columns, heights } = this.floor;
    let roof = Number.NEGATIVE_INFINITY;
    for (let y = this.low; y < high; y++) {
      for (let x = left; x < right; x++) {
        const height = heights[y * columns + x] as number;
        if (height > roof) roof = height;
      }
    }
    return roof;
  }

  private keepRoofs(): void {
    const { axes, roofs } = this;
    const { columns, rows, heights } = this.floor;
    roofs.fill(Number.NEGATIVE_INFINITY);
    for (let y = 0; y < rows; y++) {
      const line = Math.floor((y + axes.border) / TILE) * axes.columns + axes.border / TILE;
      for (let x = 0; x < columns; x++) {
        const height = heights[y * columns + x] as number;
        const tile = line + Math.floor(x / TILE);
        if (height > (roofs[tile] as number)) roofs[tile] = height;
      }
    }
  }
}

/** Cells from one tile to another in one direction: from the last of the one to the first of the other. */
const cellsApart = (a: number, b: number): number =>
  a === b ? 0 : (Math.abs(a - b) - 1) * TILE + 1;

/** Cells from a cell to the nearest of a tile that begins with another. */
function cellsTo(cell: number, first: number): number {
  if (cell < first) return first - cell;
  return Math.max(0, cell - first - TILE + 1);
}

/**
 * The highest of each tile's and those up to `reach` steps before and after it. Tiles without spots lie on every side of the others, more than `reach` of
 * them: so none is too near an end, and what follows the last of a row is as low as what follows it there.
 */
function highestAbout(heights: Float32Array, reach: number, step: number): Float32Array {
  const highest = heights.slice();
  for (let at = reach * step; at < heights.length - reach * step; at++) {
    let most = heights[at] as number;
    for (let k = at - reach * step; k <= at + reach * step; k += step) {
      const height = heights[k] as number;
      if (height > most) most = height;
    }
    highest[at] = most;
  }
  return highest;
}
