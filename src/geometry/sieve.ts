import type { ConvexPolygon } from './convexPolygon.ts';
import { Lanes, lowestBit, WORD } from './lanes.ts';
import type { Frame, Vec2 } from './vector.ts';

/** What lies ahead of a path at a corner: where both unit vectors lead forward from it. */
export interface Ahead {
  readonly x: number;
  readonly y: number;
  readonly firstX: number;
  readonly firstY: number;
  readonly lastX: number;
  readonly lastY: number;
}

/** What plain arithmetic may be wrong by, and more. Nearer calls are left open for an exact test. */
const ROUNDING = 1e-6;

/**
 * Quick tests of stretches against many convex polygons in plain arithmetic, which never say what an exact test would deny:
 * what is too near to call stays open. Coordinates up to 1e6.
 */
export class Sieve<F extends Frame> {
  /** The rectangles round the polygons, along both axes. */
  readonly #columns: Lanes;
  readonly #rows: Lanes;
  /** Middles and half sizes of the rectangles round the polygons: x, y, half width, half depth of each. */
  readonly #boxes: Float64Array;
  /** x and y of all corners, polygon by polygon; of each polygon where its corners begin, and at last where they end. */
  readonly #points: Float64Array;
  readonly #starts: Int32Array;
  /** What {@link findNear} found last, in order. */
  readonly found: Int32Array;

  constructor(polygons: readonly ConvexPolygon<F>[]) {
    this.#boxes = new Float64Array(4 * polygons.length);
    this.#starts = new Int32Array(polygons.length + 1);
    this.found = new Int32Array(polygons.length);
    let total = 0;
    for (const { corners } of polygons) total += corners.length;
    this.#points = new Float64Array(2 * total);
    let next = 0;
    for (let i = 0; i < polygons.length; i += 1) {
      const { corners, low, high } = polygons[i] as ConvexPolygon<F>;
      this.#boxes[4 * i] = (low.x + high.x) / 2;
      this.#boxes[4 * i + 1] = (low.y + high.y) / 2;
      this.#boxes[4 * i + 2] = (high.x - low.x) / 2;
      this.#boxes[4 * i + 3] = (high.y - low.y) / 2;
      for (const { x, y } of corners) {
        this.#points[next] = x;
        this.#points[next + 1] = y;
        next += 2;
      }
      this.#starts[i + 1] = next;
    }
    this.#columns = lanesOf(polygons, ({ x }) => x);
    this.#rows = lanesOf(polygons, ({ y }) => y);
  }

  /** Puts the polygons whose rectangles the segment from a to b may meet in `found`; how many there are. */
  findNear(a: Vec2<F>, b: Vec2<F>): number {
    let count = 0;
    const boxes = this.#boxes;
    const x = (a.x + b.x) / 2;
    const y = (a.y + b.y) / 2;
    const halfX = (b.x - a.x) / 2;
    const halfY = (b.y - a.y) / 2;
    const reachX = Math.abs(halfX);
    const reachY = Math.abs(halfY);
    const margin = ROUNDING * (1 + reachX + reachY);
    const columns = this.#columns;
    const rows = this.#rows;
    const firstColumn = columns.laneOf(x - reachX);
    const lastColumn = columns.laneOf(x + reachX);
    const firstRow = rows.laneOf(y - reachY);
    const lastRow = rows.laneOf(y + reachY);
    for (let word = 0; word < columns.words; word += 1) {
      let bits = columns.met(firstColumn, lastColumn, word) & rows.met(firstRow, lastRow, word);
      for (; bits !== 0; bits &= bits - 1) {
        const i = word * WORD + lowestBit(bits);
        const dx = (boxes[4 * i] ?? 0) - x;
        const halfWidth = boxes[4 * i + 2] ?? 0;
        if (Math.abs(dx) > reachX + halfWidth + ROUNDING) continue;
        const dy = (boxes[4 * i + 1] ?? 0) - y;
        const halfDepth = boxes[4 * i + 3] ?? 0;
        if (Math.abs(dy) > reachY + halfDepth + ROUNDING) continue;
        const aside = Math.abs(halfX * dy - halfY * dx);
        if (aside <= reachX * halfDepth + reachY * halfWidth + margin) this.found[count++] = i;
      }
    }
    return count;
  }

  /** Whether the segment from a to b passes through the inside of a polygon; undefined where that is too near to call. */
  passes(a: Vec2<F>, b: Vec2<F>, polygon: number): boolean | undefined {
    const points = this.#points;
    const start = this.#starts[polygon] ?? 0;
    const end = this.#starts[polygon + 1] ?? 0;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const margin = ROUNDING * (Math.abs(dx) + Math.abs(dy));
    let lowest = Number.POSITIVE_INFINITY;
    let highest = Number.NEGATIVE_INFINITY;
    let isNear = false;
    let x = points[end - 2] ?? 0;
    let y = points[end - 1] ?? 0;
    for (let i = start; i < end; i += 2) {
      const nextX = points[i] ?? 0;
      const nextY = points[i + 1] ?? 0;
      const side = dx * (nextY - a.y) - dy * (nextX - a.x);
      if (side < lowest) lowest = side;
      if (side > highest) highest = side;
      // Both ends on the outer side of one edge: that edge's line lies between.
      const edgeX = nextX - x;
      const edgeY = nextY - y;
      const edge = ROUNDING * (Math.abs(edgeX) + Math.abs(edgeY));
      const atA = edgeX * (a.y - y) - edgeY * (a.x - x);
      const atB = edgeX * (b.y - y) - edgeY * (b.x - x);
      const inner = Math.max(atA, atB);
      if (inner < -edge) return false;
      if (inner <= edge) isNear = true;
      x = nextX;
      y = nextY;
    }
    if (lowest > margin || highest < -margin) return false;
    return isNear || lowest >= -margin || highest <= margin ? undefined : true;
  }

  /** False where no corner of the polygon lies ahead; true where one may. */
  mayLieAhead(ahead: Ahead, polygon: number): boolean {
    const boxes = this.#boxes;
    const dx = (boxes[4 * polygon] ?? 0) - ahead.x;
    const dy = (boxes[4 * polygon + 1] ?? 0) - ahead.y;
    const size = (boxes[4 * polygon + 2] ?? 0) + (boxes[4 * polygon + 3] ?? 0) + ROUNDING;
    return (
      ahead.firstX * dx + ahead.firstY * dy >= -size && ahead.lastX * dx + ahead.lastY * dy >= -size
    );
  }
}

/** The rectangles round polygons along an axis, wider than rounding could make them. */
function lanesOf<F extends Frame>(
  polygons: readonly ConvexPolygon<F>[],
  along: (p: Vec2<F>) => number,
): Lanes {
  const lows = new Float64Array(polygons.length);
  const highs = new Float64Array(polygons.length);
  for (let i = 0; i < polygons.length; i += 1) {
    const { low, high } = polygons[i] as ConvexPolygon<F>;
    lows[i] = along(low) - 2 * ROUNDING;
    highs[i] = along(high) + 2 * ROUNDING;
  }
  return new Lanes(lows, highs);
}
