import { contours } from 'd3-contour';
import type { Vec2 } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import type { Ring } from './zone.ts';

/** Spots from one node of the contours to the next, and how far that is, mm. Nodes lie between spots. */
const STEP = 2;
const NODE: Mm = STEP * SPOT;
/** How far the line of a height may be from the last spot at or below it, mm: the diagonals from a place to a node and from there to a spot (rule F2). */
export const LINE: Mm = Math.SQRT2 * (NODE + (STEP - 0.5) * SPOT);
/** Nodes beyond what is swept on each side: from the second on there is nothing about them, so that every line closes. */
const BESIDE = 2;
/** Where nothing passes: higher than anything, mm. */
const NOTHING: Mm = 1e6;

/** Ground over which something passes at or below a height: closed rings, even-odd, kit frame. */
export interface HeightContour {
  readonly height: Mm;
  readonly rings: readonly Ring[];
}

/**
 * Contours of the stick floor at the given heights (mm), lowest first. Rule F2: they err to the safe side too. A node has the lowest height of all spots
 * within a step of it either way, so that all four nodes about a point are at or below the height over its cell: what passes at or below a height
 * lies inside its line, and the line at most {@link LINE} beyond.
 */
export function floorContours(floor: StickFloor, levels: readonly Mm[]): readonly HeightContour[] {
  const { left, bottom, columns, rows, lifted } = nodesOf(floor);
  const generate = contours().size([columns, rows]);
  const point = ([column = 0, row = 0]: readonly number[]): Vec2 => ({
    // The library's values lie in the middles of unit cells.
    x: left + (column - 0.5) * NODE,
    y: bottom + (row - 0.5) * NODE,
  });
  return levels
    .toSorted((p, q) => p - q)
    .map((height) => ({
      height,
      rings: generate
        .contour(lifted, -height)
        .coordinates.flatMap((polygon) => polygon.map((ring) => ring.map(point))),
    }));
}

/** Heights in rows and columns of nodes, `NODE` apart from the one at (left, bottom) on, with their sign turned. */
interface Nodes {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly columns: number;
  readonly rows: number;
  /** The library draws round what is high: what is low is lifted. */
  readonly lifted: number[];
}

/** Nodes lie whole steps from the throne, so that those of a mirrored kit are mirrored. */
function nodesOf(floor: StickFloor): Nodes {
  const { left, bottom, columns, heights } = floor;
  const swept = sweptOf(floor);
  const across = nodesAlong(left, swept.left, swept.right);
  const ahead = nodesAlong(bottom, swept.low, swept.high);
  // Made at its full length: a list turned out of a table of floats, or one that grows, costs several times as much.
  const lifted = new Array<number>(across.count * ahead.count);
  const about = new Float32Array(columns);
  let at = 0;
  for (let node = 0; node < ahead.count; node++) {
    about.fill(NOTHING);
    const row = ahead.first + node * STEP;
    for (let r = Math.max(swept.low, row - STEP); r < Math.min(swept.high + 1, row + STEP); r++) {
      for (let c = swept.left; c <= swept.right; c++) {
        const height = heights[r * columns + c] as number;
        if (height < (about[c] as number)) about[c] = height;
      }
    }
    for (let n = 0; n < across.count; n++) {
      const spot = across.first + n * STEP;
      const end = Math.min(swept.right + 1, spot + STEP);
      let least = NOTHING;
      for (let c = Math.max(swept.left, spot - STEP); c < end; c++) {
        const height = about[c] as number;
        if (height < least) least = height;
      }
      lifted[at++] = -least;
    }
  }
  return {
    left: left + (across.first - 0.5) * SPOT,
    bottom: bottom + (ahead.first - 0.5) * SPOT,
    columns: across.count,
    rows: ahead.count,
    lifted,
  };
}

/** The first and last spots over which anything passes, in columns and in rows; the first of all where nothing does. */
function sweptOf({ columns, rows, heights }: StickFloor) {
  let [left, right, low, high] = [columns, 0, rows, 0];
  for (let row = 0; row < rows; row++) {
    let first = row * columns;
    let last = first + columns - 1;
    while (first <= last && heights[first] === Number.POSITIVE_INFINITY) first++;
    if (first > last) continue;
    while (heights[last] === Number.POSITIVE_INFINITY) last--;
    left = Math.min(left, first - row * columns);
    right = Math.max(right, last - row * columns);
    low = Math.min(low, row);
    high = row;
  }
  return { left: Math.min(left, right), right, low: Math.min(low, high), high };
}

/** The spot after the first node, counted from the first of the field, and how many nodes there are about some spots, from the first to the last. */
function nodesAlong(
  start: Mm,
  begin: number,
  end: number,
): { readonly first: number; readonly count: number } {
  const from = Math.floor(start / SPOT);
  const first = STEP * Math.floor((from + begin) / STEP) - from - BESIDE * STEP;
  return { first, count: Math.ceil((end - first) / STEP) + 1 + BESIDE };
}
