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
  const lines = new LevelLines(nodesOf(floor));
  return levels
    .toSorted((p, q) => p - q)
    .map((height) => ({ height, rings: lines.ringsAt(height) }));
}

/** Heights in rows and columns of nodes, `NODE` apart from the one at (left, bottom) on. */
interface Nodes {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly columns: number;
  readonly rows: number;
  readonly heights: Float32Array;
}

/** Nodes lie whole steps from the throne, so that those of a mirrored kit are mirrored. */
function nodesOf({ left, bottom, columns, rows, heights }: StickFloor): Nodes {
  const across = nodesAlong(left, columns);
  const ahead = nodesAlong(bottom, rows);
  const along = new Float32Array(across.count * rows);
  for (let row = 0; row < rows; row++) {
    for (let node = 0; node < across.count; node++) {
      const spot = across.first + node * STEP;
      let least = NOTHING;
      const end = Math.min(columns - 1, spot + STEP);
      for (let c = Math.max(0, spot - STEP); c <= end; c++) {
        least = Math.min(least, heights[row * columns + c] as number);
      }
      along[row * across.count + node] = least;
    }
  }
  const about = new Float32Array(across.count * ahead.count);
  for (let node = 0; node < ahead.count; node++) {
    const spot = ahead.first + node * STEP;
    const end = Math.min(rows - 1, spot + STEP);
    for (let c = 0; c < across.count; c++) {
      let least = NOTHING;
      for (let row = Math.max(0, spot - STEP); row <= end; row++) {
        least = Math.min(least, along[row * across.count + c] as number);
      }
      about[node * across.count + c] = least;
    }
  }
  return {
    left: left + across.first * SPOT,
    bottom: bottom + ahead.first * SPOT,
    columns: across.count,
    rows: ahead.count,
    heights: about,
  };
}

/** The first node's spot, counted from the first of the field, and how many nodes there are in that direction. */
function nodesAlong(start: Mm, spots: number): { readonly first: number; readonly count: number } {
  const from = Math.round(start / SPOT);
  const first = STEP * Math.floor(from / STEP) - from - BESIDE * STEP;
  return { first, count: Math.ceil((spots - 1 - first) / STEP) + 1 + BESIDE };
}

/**
 * Lines of even height through squares of four nodes, straight in each. An edge between two nodes has a number: twice its left or front node's, and
 * one more when it leads ahead. Lines have what is low on their left, so that one comes in and one goes on at every edge that they cross.
 */
class LevelLines {
  private readonly nodes: Nodes;
  /** The edge at which the line that crosses an edge leaves the square that it enters there; -1 where none does. */
  private readonly next: Int32Array;
  private crossed: number[] = [];

  constructor(nodes: Nodes) {
    this.nodes = nodes;
    this.next = new Int32Array(2 * nodes.heights.length).fill(-1);
  }

  ringsAt(level: Mm): readonly Ring[] {
    this.cross(level);
    const rings: Ring[] = [];
    for (const start of this.crossed) {
      const ring: Vec2[] = [];
      let edge = start;
      for (let to = this.next[edge] as number; to >= 0; to = this.next[edge] as number) {
        ring.push(this.pointOn(edge, level));
        this.next[edge] = -1;
        edge = to;
      }
      if (ring.length > 0) rings.push(ring);
    }
    return rings;
  }

  /** Finds how the lines of a level cross all squares. */
  private cross(level: Mm): void {
    const { columns, rows, heights } = this.nodes;
    this.crossed = [];
    for (let row = 0; row + 1 < rows; row++) {
      let node = row * columns;
      const end = node + columns - 1;
      let left = bit(heights, node, level) + 8 * bit(heights, node + columns, level);
      for (; node < end; node++) {
        const right = bit(heights, node + 1, level) + 8 * bit(heights, node + columns + 1, level);
        // The bits of the corners, anticlockwise from the near left one.
        const corners = left + (right & 1) * 2 + (right & 8) / 2;
        left = right;
        if (corners > 0 && corners < 15) this.crossSquare(corners, node);
      }
    }
  }

  private crossSquare(corners: number, node: number): void {
    const sides = [2 * node, 2 * node + 3, 2 * (node + this.nodes.columns), 2 * node + 1];
    for (const [from, to] of WAYS[corners] ?? []) {
      const edge = sides[from] as number;
      this.next[edge] = sides[to] as number;
      this.crossed.push(edge);
    }
  }

  private pointOn(edge: number, level: Mm): Vec2 {
    const { left, bottom, columns, heights } = this.nodes;
    const node = edge >> 1;
    const leadsAhead = edge & 1;
    const here = heights[node] as number;
    const there = heights[leadsAhead ? node + columns : node + 1] as number;
    const share = (level - here) / (there - here);
    const column = node % columns;
    const row = (node - column) / columns;
    return {
      x: left + (column + (leadsAhead ? 0 : share)) * NODE,
      y: bottom + (row + (leadsAhead ? share : 0)) * NODE,
    };
  }
}

/** 1 where a node is at or below a level. */
const bit = (heights: Float32Array, node: number, level: Mm): number =>
  (heights[node] as number) <= level ? 1 : 0;

/** Sides of a square: near, right, far, left. By which corners are low, the sides that lines come in and go out at. */
const [NEAR, RIGHT, FAR, LEFT] = [0, 1, 2, 3] as const;
type Way = readonly [number, number];
const WAYS: readonly (readonly Way[])[] = [
  [],
  [[NEAR, LEFT]],
  [[RIGHT, NEAR]],
  [[RIGHT, LEFT]],
  [[FAR, RIGHT]],
  [
    [NEAR, LEFT],
    [FAR, RIGHT],
  ],
  [[FAR, NEAR]],
  [[FAR, LEFT]],
  [[LEFT, FAR]],
  [[NEAR, FAR]],
  [
    [RIGHT, NEAR],
    [LEFT, FAR],
  ],
  [[RIGHT, FAR]],
  [[LEFT, RIGHT]],
  [[NEAR, RIGHT]],
  [[LEFT, NEAR]],
  [],
];
