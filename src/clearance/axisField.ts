import { type Side, signOf } from '../player/hands.ts';
import type { Mm } from '../units/quantity.ts';
import { FALL, type FloorBall } from './floorBudget.ts';
import { SPOT, type StickFloor } from './floorField.ts';

/** Cells along a side of a tile; a column or row is its tile's shifted by BITS. */
export const TILE = 4;
const BITS = 2;
/** Added to places in cells: they are then above 0, so that cutting them down to whole numbers is always downwards. */
const BIAS = 2 ** 20;
/** Numbers in a piece of a swept axis: two of its points at one time and at a later one, three each. */
export const PIECE = 12;

/**
 * The lowest heights at which axes were seen over cells of the plan: those of a field of spots, and some on every side, row by row. They
 * make up tiles. Of every tile the highest entry is known: a piece above those of all tiles that it meets changes nothing.
 *
 * A piece has x and y in cells, as `cellsAcross` and `cellsAhead` tell, and its heights in mm. It is in hand space, so that mirrored moves are
 * seen over mirrored cells bit for bit.
 */
export class AxisField {
  /** Tiles from side to side and from front to back. */
  readonly columns: number;
  readonly rows: number;
  /** Cells before the first spot in either direction: whole tiles. */
  readonly border: number;
  /** Cells from side to side. */
  readonly across: number;
  /** Cell by cell, mm above the deck; infinite where no axis was seen. */
  readonly lowest: Float32Array;
  /** 1 for every tile over which any may have been seen. */
  readonly seen: Uint8Array;
  /** Tile by tile, the height from which on an axis does not matter, mm. Who looks at the field says it. */
  readonly ceilings: Float32Array;
  /** The balls that are to come down from places. */
  ball: FloorBall;
  /** The piece looked at. */
  readonly piece = new Float64Array(PIECE);
  /** At or above all entries of a tile, or at its ceiling; lower than that may be true where it is stale. */
  private readonly roofs: Float32Array;
  private readonly stale: Uint8Array;
  private readonly throneColumn: number;
  private readonly throneRow: number;
  /** The column of a place is `base` and `step` times it, cut down. */
  private base = 0;
  private step = 1;
  /** Samples to a cell's length. */
  private dense = 1;
  /** The tiles that the piece may meet, and whether they hold all of it. */
  private left = 0;
  private right = 0;
  private low = 0;
  private high = 0;
  private isInside = true;

  /** @param ball The largest that come down from places. */
  constructor({ left, bottom, columns, rows }: StickFloor, ball: FloorBall) {
    this.border = TILE * Math.ceil(ball.reach / SPOT / TILE + 1);
    this.columns = Math.ceil((columns + 2 * this.border) / TILE);
    this.rows = Math.ceil((rows + 2 * this.border) / TILE);
    this.across = this.columns * TILE;
    const tiles = this.columns * this.rows;
    this.lowest = new Float32Array(tiles * TILE * TILE);
    this.seen = new Uint8Array(tiles);
    this.ceilings = new Float32Array(tiles).fill(Number.POSITIVE_INFINITY);
    this.roofs = new Float32Array(tiles);
    this.stale = new Uint8Array(tiles);
    this.throneColumn = this.border - Math.floor(left / SPOT);
    this.throneRow = this.border - Math.floor(bottom / SPOT);
    this.turnTo('right');
    this.ball = ball;
    this.clear(ball);
  }

  /** Forgets all that was seen. What is seen next is for other balls. */
  clear(ball: FloorBall): void {
    this.ball = ball;
    // No less than one a cell: a cell that is left out lets what is higher be looked at.
    this.dense = Math.max(1, SPOT / ball.stride);
    this.lowest.fill(Number.POSITIVE_INFINITY);
    this.roofs.set(this.ceilings);
    this.seen.fill(0);
    this.stale.fill(0);
  }

  /** Says in whose hand space the next pieces are. */
  turnTo(side: Side): void {
    this.step = signOf(side);
    // What is right of the throne in hand space lies in the cell beside it for a left hand.
    this.base = this.throneColumn - this.step * BIAS - (side === 'left' ? 1 : 0);
  }

  cellsAcross(x: Mm): number {
    return x / SPOT + BIAS;
  }

  cellsAhead(y: Mm): number {
    return y / SPOT + BIAS;
  }

  /** Whether the field may be above anything within `loose` mm of the piece. */
  meets(loose: Mm): boolean {
    const { piece: p, columns, roofs, stale } = this;
    this.find(loose / SPOT);
    const lowest = least(p, 2) - loose;
    for (let row = this.low; row <= this.high; row++) {
      const end = row * columns + this.right;
      for (let tile = row * columns + this.left; tile <= end; tile++) {
        if ((roofs[tile] as number) <= lowest) continue;
        if (stale[tile] === 0 || this.roofAgain(tile) > lowest) return true;
      }
    }
    return false;
  }

  /** Finds the tiles within `off` cells of the piece. */
  private find(off: number): void {
    const { piece: p, base, step } = this;
    const one = base + step * Math.floor(least(p, 0) - off);
    const other = base + step * Math.floor(most(p, 0) + off);
    const first = step > 0 ? one : other;
    const last = step > 0 ? other : one;
    const low = this.throneRow - BIAS + Math.floor(least(p, 1) - off);
    const high = this.throneRow - BIAS + Math.floor(most(p, 1) + off);
    const columns = this.across;
    const rows = this.rows * TILE;
    this.isInside = first >= 0 && last < columns && low >= 0 && high < rows;
    this.left = first < 0 ? 0 : first >> BITS;
    this.right = last < columns ? last >> BITS : this.columns - 1;
    this.low = low < 0 ? 0 : low >> BITS;
    this.high = high < rows ? high >> BITS : this.rows - 1;
  }

  private roofAgain(tile: number): Mm {
    const { columns, across, lowest } = this;
    const row = Math.floor(tile / columns);
    let at = row * TILE * across + (tile - row * columns) * TILE;
    let roof = lowest[at] as number;
    for (let line = 0; line < TILE; line++) {
      for (let cell = at; cell < at + TILE; cell++) {
        const height = lowest[cell] as number;
        if (height > roof) roof = height;
      }
      at += across;
    }
    const ceiling = this.ceilings[tile] as number;
    if (ceiling < roof) roof = ceiling;
    this.roofs[tile] = roof;
    this.stale[tile] = 0;
    return roof;
  }

  /**
   * Lowers the field to samples of the piece that was last found to meet it. They are so dense that balls about them, grown and lowered, come down
   * wherever one about any place of the piece does (rule F3).
   */
  sample(): void {
    const { piece: p } = this;
    const long = Math.max(planGap(p, 0, 3), planGap(p, 6, 9));
    const way = Math.max(planGap(p, 0, 6), planGap(p, 3, 9));
    const points = this.samplesOf(long, Math.max(rise(p, 0, 3), rise(p, 6, 9)));
    const times = this.samplesOf(way, Math.max(rise(p, 0, 6), rise(p, 3, 9)));
    const first = firstOf(long, points, this.ball.end / SPOT);
    const begin = firstOf(way, times, this.ball.end / SPOT);
    const step = stepOf(begin, times);
    this.see();
    for (let k = 0; k < times; k++) this.sampleAt(begin + k * step, first, points);
  }

  /** How many samples go so many cells far and rise so many mm. */
  private samplesOf(far: number, rise: Mm): number {
    const gaps = Math.ceil((far - (2 * this.ball.end) / SPOT) * this.dense);
    const steps = rise > FALL ? Math.ceil(rise / FALL) : 0;
    return 1 + Math.max(0, gaps, steps);
  }

  /** Samples the axis at a share of the piece's time, from a share of its length on. */
  private sampleAt(t: number, from: number, points: number): void {
    const { piece: p, lowest, across, base, step, isInside } = this;
    const first = (this.throneRow - BIAS) * across + base;
    const share = stepOf(from, points);
    let x = between(p, 0, t);
    let y = between(p, 1, t);
    let z = between(p, 2, t);
    let dx = between(p, 3, t) - x;
    let dy = between(p, 4, t) - y;
    let dz = between(p, 5, t) - z;
    x += from * dx;
    y += from * dy;
    z += from * dz;
    dx *= share;
    dy *= share;
    dz *= share;
    let count = points;
    if (!isInside) {
      // It is straight: only first and last samples lie outside the field. This is no part of the loop below, which is the most of all the work.
      for (; count > 0 && !this.holds(x | 0, y | 0); count--) {
        x += dx;
        y += dy;
        z += dz;
      }
      const end = (at: number, by: number): number => (at + (count - 1) * by) | 0;
      while (count > 0 && !this.holds(end(x, dx), end(y, dy))) count--;
    }
    for (let i = 0; i < count; i++) {
      const at = first + (y | 0) * across + step * (x | 0);
      if (z < (lowest[at] as number)) lowest[at] = z;
      x += dx;
      y += dy;
      z += dz;
    }
  }

  /** Whether the field has the cell of a place in whole cells. */
  private holds(x: number, y: number): boolean {
    const column = this.base + this.step * x;
    const row = y + this.throneRow - BIAS;
    return column >= 0 && column < this.across && row >= 0 && row < this.rows * TILE;
  }

  /** Lowers all tiles that have anything within `loose` mm of the piece that was last found to meet the field. */
  flood(loose: Mm): void {
    const { across, lowest } = this;
    const height = least(this.piece, 2) - loose;
    this.see();
    for (let row = this.low * TILE; row < (this.high + 1) * TILE; row++) {
      const end = row * across + (this.right + 1) * TILE;
      for (let at = row * across + this.left * TILE; at < end; at++) {
        lowest[at] = Math.min(height, lowest[at] as number);
      }
    }
  }

  private see(): void {
    const { columns, seen, stale } = this;
    for (let row = this.low; row <= this.high; row++) {
      const end = row * columns + this.right;
      for (let tile = row * columns + this.left; tile <= end; tile++) {
        seen[tile] = 1;
        stale[tile] = 1;
      }
    }
  }
}

/** The share of a piece at which the first of some samples is: as far from its end as may be, and no farther than half of their steps. */
const firstOf = (far: number, samples: number, end: number): number =>
  Math.min(end / far, 0.5 / samples);

/** The share from one of some samples to the next, from the first on. */
const stepOf = (first: number, samples: number): number =>
  samples > 1 ? (1 - 2 * first) / (samples - 1) : 0;

/** How far apart two points of a piece are on the plan, in cells. */
export function planGap(p: Float64Array, a: number, b: number): number {
  const x = (p[b] as number) - (p[a] as number);
  const y = (p[b + 1] as number) - (p[a + 1] as number);
  return Math.sqrt(x * x + y * y);
}

const rise = (p: Float64Array, a: number, b: number): Mm =>
  Math.abs((p[b + 2] as number) - (p[a + 2] as number));

/** A number of a piece's point at a share of its time. */
function between(p: Float64Array, k: number, t: number): number {
  const first = p[k] as number;
  return first + t * ((p[k + 6] as number) - first);
}

/** The least and the most of a number among the four points of a piece. */
function least(p: Float64Array, k: number): number {
  const a = p[k] as number;
  const b = p[k + 3] as number;
  const c = p[k + 6] as number;
  const d = p[k + 9] as number;
  const first = a < b ? a : b;
  const last = c < d ? c : d;
  return first < last ? first : last;
}

function most(p: Float64Array, k: number): number {
  const a = p[k] as number;
  const b = p[k + 3] as number;
  const c = p[k + 6] as number;
  const d = p[k + 9] as number;
  const first = a > b ? a : b;
  const last = c > d ? c : d;
  return first > last ? first : last;
}
