import { contours } from 'd3-contour';
import type { Vec2 } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import type { Ring } from './zone.ts';

/** Spots from one node of the contours to the next, and how far that is, mm. */
const STEP = 2;
export const NODE: Mm = STEP * SPOT;
/** Nodes beyond the field on each side: from the second on there is nothing about them, so that every line closes. */
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
 * within a step of it either way, so that all four nodes about a point are at or below the height over it: what passes at or below a height
 * lies inside its line, and the line at most two diagonals between nodes beyond.
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
function nodesOf({ left, bottom, columns, rows, heights }: StickFloor): Nodes {
  const across = nodesAlong(left, columns);
  const ahead = nodesAlong(bottom, rows);
  // Made at its full length: a list turned out of a table of floats, or one that grows, costs several times as much.
  const lifted = new Array<number>(across.count * ahead.count);
  const about = new Float32Array(columns);
  let at = 0;
  for (let node = 0; node < ahead.count; node++) {
    about.fill(NOTHING);
    const row = ahead.first + node * STEP;
    for (let r = Math.max(0, row - STEP); r <= Math.min(rows - 1, row + STEP); r++) {
      for (let c = 0; c < columns; c++) {
        const height = heights[r * columns + c] as number;
        if (height < (about[c] as number)) about[c] = height;
      }
    }
    for (let n = 0; n < across.count; n++) {
      const spot = across.first + n * STEP;
      const end = Math.min(columns - 1, spot + STEP);
      let least = NOTHING;
      for (let c = Math.max(0, spot - STEP); c <= end; c++) {
        const height = about[c] as number;
        if (height < least) least = height;
      }
      lifted[at++] = -least;
    }
  }
  return {
    left: left + across.first * SPOT,
    bottom: bottom + ahead.first * SPOT,
    columns: across.count,
    rows: ahead.count,
    lifted,
  };
}

/** The first node's spot, counted from the first of the field, and how many nodes there are in that direction. */
function nodesAlong(start: Mm, spots: number): { readonly first: number; readonly count: number } {
  const from = Math.round(start / SPOT);
  const first = STEP * Math.floor(from / STEP) - from - BESIDE * STEP;
  return { first, count: Math.ceil((spots - 1 - first) / STEP) + 1 + BESIDE };
}
