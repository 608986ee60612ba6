import type { Mm } from '../units/quantity.ts';
import { type AxisField, CELLS, TILE } from './axisField.ts';
import { LOWER, WIDER } from './floorBudget.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import { lowestFirst } from './lowestFirst.ts';

/**
 * Lowers a field of spots to the under sides of balls about the places of axes, radius by radius (rule F3). Of every tile of spots the highest height
 * is known: what none of the balls of another tile comes down to is passed over.
 */
export class BallsBelow {
  private readonly floor: StickFloor;
  private readonly axes: AxisField;
  /** The highest height over each tile; minus infinite where it has no spot. */
  private readonly roofs: Float32Array;
  /** Farthest that a ball reaches: so many cells and so many tiles to any side. */
  private span = 0;
  private reach = 0;
  /** How far a ball comes down from its middle, by how many cells a spot is ahead and aside of it, from -`half` to `half`; minus infinite beyond it. */
  private depths = new Float64Array();
  private half = 0;

  constructor(floor: StickFloor, axes: AxisField) {
    this.floor = floor;
    this.axes = axes;
    this.roofs = new Float32Array(axes.columns * axes.rows);
    for (let tile = 0; tile < this.roofs.length; tile++) this.keepRoof(tile);
  }

  /** Says to the axes from which heights on balls of a radius would lower nothing. */
  sayCeilings(radius: Mm): void {
    const { columns, rows, ceilings } = this.axes;
    const reach = Math.ceil((radius + WIDER) / SPOT / TILE);
    const along = highestAbout(this.roofs, reach, { step: 1, count: columns });
    const about = highestAbout(along, reach, { step: columns, count: rows });
    for (let tile = 0; tile < about.length; tile++) {
      ceilings[tile] = (about[tile] as number) + radius + LOWER;
    }
  }

  /** Lowers the field to balls of a radius about all places that the axes were seen at. */
  lower(radius: Mm): void {
    this.findDepths(radius);
    const { seen } = this.axes;
    const bottoms = new Float64Array(seen.length).fill(Number.POSITIVE_INFINITY);
    for (let tile = 0; tile < seen.length; tile++) {
      if (seen[tile] === 1) bottoms[tile] = this.bottom(tile);
    }
    // The lowest first: the others then have less to lower.
    for (const tile of lowestFirst(bottoms)) this.spread(tile);
  }

  private findDepths(radius: Mm): void {
    this.span = Math.ceil((radius + WIDER) / SPOT);
    this.reach = Math.ceil(this.span / TILE);
    const half = this.reach * TILE;
    const side = 2 * half + 1;
    this.half = half;
    this.depths = new Float64Array(side * side);
    for (let j = 0; j < side; j++) {
      for (let i = 0; i < side; i++) {
        // From the nearest point of one cell to the nearest of the other.
        const across = Math.max(0, Math.abs(i - half) - 1);
        const ahead = Math.max(0, Math.abs(j - half) - 1);
        const off = Math.max(0, SPOT * Math.hypot(across, ahead) - WIDER);
        const depth =
          off < radius ? Math.sqrt(radius * radius - off * off) : Number.NEGATIVE_INFINITY;
        this.depths[j * side + i] = depth;
      }
    }
  }

  private bottom(tile: number): Mm {
    const { lowest } = this.axes;
    let bottom = Number.POSITIVE_INFINITY;
    for (let at = tile * CELLS; at < (tile + 1) * CELLS; at++) {
      const height = lowest[at] as number;
      if (height < bottom) bottom = height;
    }
    return bottom;
  }

  /** Lowers all tiles of spots that balls about the places in one tile may come down to. */
  private spread(tile: number): void {
    const { axes, half, reach, depths, roofs } = this;
    const { columns, rows } = axes;
    const row = Math.floor(tile / columns);
    const column = tile - row * columns;
    const bottom = this.bottom(tile) - LOWER;
    for (let r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
      const ahead = half + cellsApart(r, row);
      for (let c = Math.max(0, column - reach); c <= Math.min(columns - 1, column + reach); c++) {
        const depth = depths[ahead * (2 * half + 1) + half + cellsApart(c, column)] as number;
        if (bottom - depth >= (roofs[r * columns + c] as number)) continue;
        this.lowerTile(tile, r, c);
        this.keepRoof(r * columns + c);
      }
    }
  }

  /** Lowers the spots of the tile in a row and column of tiles to balls about the places in another tile. */
  private lowerTile(tile: number, r: number, c: number): void {
    const { axes, half, depths } = this;
    const side = 2 * half + 1;
    const roof = this.roofs[r * axes.columns + c] as number;
    const row = Math.floor(tile / axes.columns) * TILE;
    const column = (tile % axes.columns) * TILE;
    let at = tile * CELLS;
    for (let j = row; j < row + TILE; j++) {
      const ahead = (half + cellsTo(j, r * TILE)) * side + half;
      for (let i = column; i < column + TILE; i++) {
        const height = (axes.lowest[at++] as number) - LOWER;
        const depth = depths[ahead + cellsTo(i, c * TILE)] as number;
        if (height - depth < roof) this.lowerSpots(height, i, j, r * axes.columns + c);
      }
    }
  }

  /** Lowers the spots of a tile to a ball about a height over a cell. */
  private lowerSpots(height: Mm, column: number, row: number, tile: number): void {
    const { axes, floor, half, span, depths } = this;
    const { border } = axes;
    const i = column - border;
    const j = row - border;
    const left = (tile % axes.columns) * TILE - border;
    const bottom = Math.floor(tile / axes.columns) * TILE - border;
    const first = Math.max(left, 0, i - span);
    const last = Math.min(left + TILE, floor.columns, i + span + 1);
    const end = Math.min(bottom + TILE, floor.rows, j + span + 1);
    for (let y = Math.max(bottom, 0, j - span); y < end; y++) {
      const line = (half + y - j) * (2 * half + 1) + half - i;
      const spots = y * floor.columns;
      for (let x = first; x < last; x++) {
        const under = height - (depths[line + x] as number);
        if (under < (floor.heights[spots + x] as number)) floor.heights[spots + x] = under;
      }
    }
  }

  private keepRoof(tile: number): void {
    const { axes, floor } = this;
    const left = (tile % axes.columns) * TILE - axes.border;
    const bottom = Math.floor(tile / axes.columns) * TILE - axes.border;
    const first = Math.max(0, left);
    const last = Math.min(floor.columns, left + TILE);
    const end = Math.min(floor.rows, bottom + TILE);
    let roof = Number.NEGATIVE_INFINITY;
    for (let y = Math.max(0, bottom); y < end; y++) {
      for (let x = first; x < last; x++) {
        const height = floor.heights[y * floor.columns + x] as number;
        if (height > roof) roof = height;
      }
    }
    this.roofs[tile] = roof;
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

/** The highest of each entry and those up to `reach` steps before and after it, of `count` in a line. */
function highestAbout(
  heights: Float32Array,
  reach: number,
  { step, count }: { readonly step: number; readonly count: number },
): Float32Array {
  const highest = new Float32Array(heights.length);
  for (let at = 0; at < heights.length; at++) {
    const place = Math.floor(at / step) % count;
    let most = Number.NEGATIVE_INFINITY;
    for (let k = Math.max(-reach, -place); k <= Math.min(reach, count - 1 - place); k++) {
      const height = heights[at + k * step] as number;
      if (height > most) most = height;
    }
    highest[at] = most;
  }
  return highest;
}
