import { contours } from 'd3-contour';
import type { Vec2 } from '../geometry/vector.ts';
import { BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import { signOf } from '../player/hands.ts';
import type { Mm } from '../units/quantity.ts';
import type { BoxedMove, SweptMoves } from './sweptMoves.ts';
import type { Ring } from './zone.ts';

/** Distance between the spots of the field, mm. */
export const SPOT: Mm = 20;
/** Farthest any point of an arm is from one of the moments looked at, mm: the parts are thickened by as much. */
const STEP: Mm = 5;

/** A rectangle of the plan, kit frame, mm. */
export interface PlanArea {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly right: Mm;
  readonly top: Mm;
}

/** The lowest height swept over spots of the plan: `heights[row * columns + column]` over (left + column SPOT, bottom + row SPOT). */
export interface StickFloor {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly columns: number;
  readonly rows: number;
  /** mm above the deck; infinite where nothing passes. */
  readonly heights: Float32Array;
}

/**
 * Rule F1: the stick floor. Every stick, hand and forearm is looked at in moments so near each other that no point is ever more than 5 mm
 * from its place in one of them, and thickened by those 5 mm: the height is never above the true one, and never more than
 * 15 mm below the lowest true height within 10 mm of the spot.
 */
export function stickFloor(swept: SweptMoves, area: PlanArea): StickFloor {
  const columns = Math.max(1, Math.floor((area.right - area.left) / SPOT) + 1);
  const rows = Math.max(1, Math.floor((area.top - area.bottom) / SPOT) + 1);
  const heights = new Float32Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  const field = new Field({ left: area.left, bottom: area.bottom, columns, rows, heights });
  const row = new Float64Array(POSITION);
  const [stick, hand, forearm] = swept.arm.parts;
  if (!stick || !hand || !forearm) return field.floor;
  for (const boxed of swept.moves) {
    const { move } = boxed;
    const sign = signOf(move.side);
    const moments = momentsOf(boxed, swept);
    for (let i = 0; i <= moments; i++) {
      move.write(i / moments, row, 0);
      for (let x = 0; x < POSITION; x += 3) row[x] = sign * (row[x] as number);
      field.lower(row, BUTT, TIP, stick.radius + STEP);
      field.lower(row, GRIP, GRIP, hand.radius + STEP);
      field.lower(row, ELBOW, GRIP, forearm.radius + STEP);
    }
  }
  return field.floor;
}

/**
 * Moments after each other are at most twice the step apart, by the fastest point of the arm. The elbow's rooms in the intervals bound
 * half its way in each.
 */
function momentsOf({ move, interval, intervals }: BoxedMove, swept: SweptMoves): number {
  const rooms = swept.elbowRoom.subarray(interval, interval + intervals);
  const elbow = 2 * intervals * Math.max(...rooms);
  const fastest = Math.max(move.speed.butt, move.speed.tip, move.speed.grip, elbow);
  return Math.max(1, Math.ceil(fastest / (2 * STEP)));
}

class Field {
  readonly floor: StickFloor;

  constructor(floor: StickFloor) {
    this.floor = floor;
  }

  /** Lowers the field to the under side of the capsule between the points at row[a] and row[b]. */
  lower(row: Float64Array, a: number, b: number, radius: Mm): void {
    const { left, bottom, columns, rows, heights } = this.floor;
    const ax = row[a] as number;
    const ay = row[a + 1] as number;
    const bx = row[b] as number;
    const by = row[b + 1] as number;
    const first = Math.max(0, Math.ceil((Math.min(ax, bx) - radius - left) / SPOT));
    const last = Math.min(columns - 1, Math.floor((Math.max(ax, bx) + radius - left) / SPOT));
    const low = Math.max(0, Math.ceil((Math.min(ay, by) - radius - bottom) / SPOT));
    const high = Math.min(rows - 1, Math.floor((Math.max(ay, by) + radius - bottom) / SPOT));
    const under = new UnderSide(row, a, b, radius);
    for (let r = low; r <= high; r++) {
      for (let c = first; c <= last; c++) {
        const height = under.at(left + c * SPOT, bottom + r * SPOT);
        if (height < (heights[r * columns + c] as number)) heights[r * columns + c] = height;
      }
    }
  }
}

/** The under side of a capsule as a height over the plan; infinite beside it. */
class UnderSide {
  private readonly row: Float64Array;
  private readonly a: number;
  private readonly b: number;
  private readonly radius: Mm;
  private readonly size: Mm;
  private readonly dx: number;
  private readonly dy: number;
  private readonly dz: number;

  constructor(row: Float64Array, a: number, b: number, radius: Mm) {
    this.row = row;
    this.a = a;
    this.b = b;
    this.radius = radius;
    const x = (row[b] as number) - (row[a] as number);
    const y = (row[b + 1] as number) - (row[a + 1] as number);
    const z = (row[b + 2] as number) - (row[a + 2] as number);
    this.size = Math.sqrt(x * x + y * y + z * z);
    const k = this.size > 0 ? 1 / this.size : 0;
    this.dx = x * k;
    this.dy = y * k;
    this.dz = z * k;
  }

  at(x: Mm, y: Mm): Mm {
    const side = this.cylinder(x, y);
    return Math.min(side, this.ball(x, y, this.a), this.ball(x, y, this.b));
  }

  private ball(x: Mm, y: Mm, end: number): Mm {
    const ux = x - (this.row[end] as number);
    const uy = y - (this.row[end + 1] as number);
    const depth = this.radius * this.radius - ux * ux - uy * uy;
    if (depth < 0) return Number.POSITIVE_INFINITY;
    return (this.row[end + 2] as number) - Math.sqrt(depth);
  }

  /** The lower point where the vertical line over (x, y) enters the round side: the smaller root of a quadratic in the height. */
  private cylinder(x: Mm, y: Mm): Mm {
    const { dx, dy, dz } = this;
    const ux = x - (this.row[this.a] as number);
    const uy = y - (this.row[this.a + 1] as number);
    const along = ux * dx + uy * dy;
    const flat = 1 - dz * dz;
    if (flat < 1e-9) return Number.POSITIVE_INFINITY;
    const rest = ux * ux + uy * uy - along * along - this.radius * this.radius;
    const root = along * along * dz * dz - flat * rest;
    if (root < 0) return Number.POSITIVE_INFINITY;
    const height = (along * dz - Math.sqrt(root)) / flat;
    const at = along + height * dz;
    if (at < 0 || at > this.size) return Number.POSITIVE_INFINITY;
    return (this.row[this.a + 2] as number) + height;
  }
}

/** Ground over which something passes at or below a height: closed rings, even-odd, kit frame. */
export interface HeightContour {
  readonly height: Mm;
  readonly rings: readonly Ring[];
}

/** Contours of the stick floor at the given heights (mm), lowest first. */
export function floorContours(floor: StickFloor, levels: readonly Mm[]): readonly HeightContour[] {
  const { left, bottom, columns, rows, heights } = floor;
  const lifted = Array.from(heights, (height) => (Number.isFinite(height) ? -height : -1e6));
  const generate = contours().size([columns, rows]);
  return levels
    .toSorted((p, q) => p - q)
    .map((height) => {
      const { coordinates } = generate.contour(lifted, -height);
      const point = ([column = 0, row = 0]: readonly number[]): Vec2 => ({
        // The library's spots lie at the middles of unit cells.
        x: left + (column - 0.5) * SPOT,
        y: bottom + (row - 0.5) * SPOT,
      });
      return {
        height,
        rings: coordinates.flatMap((polygon) => polygon.map((ring) => ring.map(point))),
      };
    });
}
