import type { Mm } from '../units/quantity.ts';
import { SPOT, type StickFloor } from './floorField.ts';

/** A capsule nearer to upright than this (the squared sine) has no round side to see from below. */
const UPRIGHT = 1e-9;
/** Spots along a side of a block, whose highest height is kept. */
const BLOCK = 2;
/** Parts of a capsule that are looked at apart: so long each, mm, and at most so many. */
const SHORT: Mm = 60;
const MOST_PARTS = 6;

/**
 * Lowers a field of heights to the under sides of capsules, one after another. Of each block of spots the highest height is
 * known: a block that lies below a part of the capsule as a whole is passed over.
 */
export class UnderSides {
  private readonly floor: StickFloor;
  private readonly blocksAcross: number;
  /** The highest height in each block. */
  private readonly roofs: Float32Array;
  private ax = 0;
  private ay = 0;
  private az = 0;
  private bx = 0;
  private by = 0;
  private bz = 0;
  /** Direction of the axis, and its length. */
  private dx = 0;
  private dy = 0;
  private dz = 0;
  private size: Mm = 0;
  private radius: Mm = 0;
  /** The part of the axis that is looked at: where it starts on the plan, how it goes on, and its lowest height. */
  private px: Mm = 0;
  private py: Mm = 0;
  private ex: Mm = 0;
  private ey: Mm = 0;
  private level: Mm = 0;

  constructor(floor: StickFloor) {
    this.floor = floor;
    this.blocksAcross = Math.ceil(floor.columns / BLOCK);
    const blocks = this.blocksAcross * Math.ceil(floor.rows / BLOCK);
    this.roofs = new Float32Array(blocks).fill(Number.POSITIVE_INFINITY);
  }

  /** Takes the capsule between the points at p[a] and p[a + 3]. */
  take(p: Float64Array, a: number, radius: Mm): void {
    this.ax = p[a] as number;
    this.ay = p[a + 1] as number;
    this.az = p[a + 2] as number;
    this.bx = p[a + 3] as number;
    this.by = p[a + 4] as number;
    this.bz = p[a + 5] as number;
    this.radius = radius;
  }

  /** Whether the field is known to lie at or below all of the capsule already. */
  isBelow(): boolean {
    return !this.meets(false);
  }

  /** Lowers the field to the capsule taken. */
  lower(): void {
    this.aim();
    this.meets(true);
  }

  /**
   * Whether any spot reaches above what the capsule can come down to there: looked at part by part, because the capsule slopes.
   * With `lowers`, all such spots are lowered.
   */
  private meets(lowers: boolean): boolean {
    const { ax, ay, az } = this;
    const [x, y, z] = [this.bx - ax, this.by - ay, this.bz - az];
    const long = Math.max(Math.abs(x), Math.abs(y), Math.abs(z));
    const parts = Math.min(MOST_PARTS, Math.ceil(long / SHORT) || 1);
    this.ex = x / parts;
    this.ey = y / parts;
    let isMet = false;
    for (let i = 0; i < parts; i++) {
      const s = i / parts;
      this.px = ax + s * x;
      this.py = ay + s * y;
      this.level = Math.min(az + s * z, az + ((i + 1) / parts) * z);
      if (this.meetsPart(lowers)) isMet = true;
      if (isMet && !lowers) return true;
    }
    return isMet;
  }

  private meetsPart(lowers: boolean): boolean {
    const { left, bottom, columns, rows } = this.floor;
    const { px, py, ex, ey, radius, blocksAcross, roofs } = this;
    const first = Math.max(0, Math.ceil((Math.min(px, px + ex) - radius - left) / SPOT));
    const to = Math.max(px, px + ex) + radius;
    const last = Math.min(columns - 1, Math.floor((to - left) / SPOT));
    const low = Math.max(0, Math.ceil((Math.min(py, py + ey) - radius - bottom) / SPOT));
    const top = Math.max(py, py + ey) + radius;
    const high = Math.min(rows - 1, Math.floor((top - bottom) / SPOT));
    if (first > last || low > high) return false;
    const lowest = this.level - radius;
    const from = Math.floor(first / BLOCK);
    const until = Math.floor(last / BLOCK);
    const end = Math.floor(high / BLOCK);
    let isMet = false;
    for (let row = Math.floor(low / BLOCK); row <= end; row++) {
      const edge = row * blocksAcross;
      for (let block = edge + from; block <= edge + until; block++) {
        if ((roofs[block] as number) <= lowest) continue;
        if (!this.meetsBlock(row, block - edge, lowers)) continue;
        if (!lowers) return true;
        isMet = true;
      }
    }
    return isMet;
  }

  private meetsBlock(blockRow: number, blockColumn: number, lowers: boolean): boolean {
    const { left, bottom, columns, rows, heights } = this.floor;
    const lowest = this.level - this.radius;
    const endRow = Math.min(rows, (blockRow + 1) * BLOCK);
    const endColumn = Math.min(columns, (blockColumn + 1) * BLOCK);
    let isMet = false;
    for (let r = blockRow * BLOCK; r < endRow; r++) {
      for (let c = blockColumn * BLOCK; c < endColumn; c++) {
        const x = left + c * SPOT;
        const y = bottom + r * SPOT;
        const at = r * columns + c;
        const before = heights[at] as number;
        if (before <= lowest || before <= this.leastAt(x, y)) continue;
        if (!lowers) return true;
        isMet = true;
        const height = this.under(x, y);
        if (height < before) heights[at] = height;
      }
    }
    if (isMet) this.keepRoof(blockRow, blockColumn);
    return isMet;
  }

  private keepRoof(blockRow: number, blockColumn: number): void {
    const { columns, rows, heights } = this.floor;
    let most = Number.NEGATIVE_INFINITY;
    for (let r = blockRow * BLOCK; r < Math.min(rows, (blockRow + 1) * BLOCK); r++) {
      for (let c = blockColumn * BLOCK; c < Math.min(columns, (blockColumn + 1) * BLOCK); c++) {
        most = Math.max(most, heights[r * columns + c] as number);
      }
    }
    this.roofs[blockRow * this.blocksAcross + blockColumn] = most;
  }

  /**
   * No point of the capsule's surface about this part of its axis is lower over a spot; infinite aside of it. A surface point is one radius
   * from a point of the axis, and to the side by at least the spot's distance from it on the plan.
   */
  private leastAt(x: Mm, y: Mm): Mm {
    const { ex, ey, radius } = this;
    const dx = x - this.px;
    const dy = y - this.py;
    const size = ex * ex + ey * ey;
    const k = size > 0 ? Math.min(1, Math.max(0, (dx * ex + dy * ey) / size)) : 0;
    const ux = dx - k * ex;
    const uy = dy - k * ey;
    const depth = radius * radius - ux * ux - uy * uy;
    return depth < 0 ? Number.POSITIVE_INFINITY : this.level - Math.sqrt(depth);
  }

  private aim(): void {
    const x = this.bx - this.ax;
    const y = this.by - this.ay;
    const z = this.bz - this.az;
    this.size = Math.sqrt(x * x + y * y + z * z);
    const k = this.size > 0 ? 1 / this.size : 0;
    this.dx = x * k;
    this.dy = y * k;
    this.dz = z * k;
  }

  /** The height at which the vertical line over (x, y) enters the capsule from below; infinite beside it. */
  private under(x: Mm, y: Mm): Mm {
    const { dx, dy, dz, radius } = this;
    const ux = x - this.ax;
    const uy = y - this.ay;
    const along = ux * dx + uy * dy;
    const flat = 1 - dz * dz;
    const rest = ux * ux + uy * uy - along * along - radius * radius;
    const root = along * along * dz * dz - flat * rest;
    if (flat < UPRIGHT || root < 0) return Math.min(this.underA(ux, uy), this.underB(x, y));
    const height = (along * dz - Math.sqrt(root)) / flat;
    // Where the round side is entered between the ends, the balls at the ends are inside: entered later.
    const at = along + height * dz;
    if (at < 0) return this.underA(ux, uy);
    return at > this.size ? this.underB(x, y) : this.az + height;
  }

  private underA(ux: Mm, uy: Mm): Mm {
    const depth = this.radius * this.radius - ux * ux - uy * uy;
    return depth < 0 ? Number.POSITIVE_INFINITY : this.az - Math.sqrt(depth);
  }

  private underB(x: Mm, y: Mm): Mm {
    const ux = x - this.bx;
    const uy = y - this.by;
    const depth = this.radius * this.radius - ux * ux - uy * uy;
    return depth < 0 ? Number.POSITIVE_INFINITY : this.bz - Math.sqrt(depth);
  }
}
