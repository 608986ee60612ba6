import type { Mm } from '../units/quantity.ts';
import { type AxisField, TILE } from './axisField.ts';
import { ballDepth } from './ballDepth.ts';
import { LOWER, WIDER } from './floorBudget.ts';
import { SPOT, type StickFloor } from './floorField.ts';

/** Whether balls of a radius reach no farther than a tile. */
export const isSmall = (radius: Mm): boolean => radius + WIDER <= TILE * SPOT;

/**
 * Lowers a field of spots to the under sides of small balls about the places of axes (rule F3), spot by spot. How far a ball comes down depends on how many
 * whole cells lie between: so the lowest of each cell and all that touch it is found first, and spots look at that from so many cells off.
 */
export function lowerToSmallBalls(floor: StickFloor, axes: AxisField, radius: Mm): void {
  const { border, across, rows } = axes;
  const { columns, heights } = floor;
  const steps = stepsWithin(radius, across);
  const about = new Float32Array(axes.lowest.length).fill(Number.POSITIVE_INFINITY);
  const spans = Array.from({ length: rows }, (_, row) => seenAbout(axes, row));
  for (const [row, span] of spans.entries()) findLowestAbout(axes, row, span, about);
  for (let y = 0; y < floor.rows; y++) {
    const { first, end } = spans[Math.floor((y + border) / TILE)] as Span;
    const from = y * columns + Math.max(0, first - border);
    const to = y * columns + Math.min(columns, end - border);
    const start = (y + border) * across + border - y * columns;
    for (const { step, depth } of steps) {
      const off = start + step;
      for (let spot = from; spot < to; spot++) {
        const under = (about[spot + off] as number) - LOWER - depth;
        if (under < (heights[spot] as number)) heights[spot] = under;
      }
    }
  }
}

/** Cells of a row, from the first to before the end. */
interface Span {
  readonly first: number;
  readonly end: number;
}

/** The cells of a row of tiles, less the outermost, within a tile of any over which an axis was seen. */
function seenAbout({ columns, rows, seen }: AxisField, row: number): Span {
  let first = columns;
  let last = -1;
  for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
    const line = seen.subarray(r * columns, (r + 1) * columns);
    const from = line.indexOf(1);
    if (from >= 0 && from < first) first = from;
    last = Math.max(last, line.lastIndexOf(1));
  }
  // The outermost cells have not all others about them; no spot looks at them.
  return row === 0 || row === rows - 1 || last < 0
    ? { first: 0, end: 0 }
    : { first: TILE * Math.max(1, first - 1), end: TILE * Math.min(columns - 1, last + 2) };
}

/** Writes the lowest of each cell and the eight about it, along a span of a row of tiles. */
function findLowestAbout(axes: AxisField, row: number, span: Span, about: Float32Array): void {
  const { across, lowest } = axes;
  for (let line = row * TILE; line < (row + 1) * TILE; line++) {
    const end = line * across + span.end;
    for (let at = line * across + span.first; at < end; at++) {
      let least = lowest[at] as number;
      for (let near = at - across; near <= at + across; near += across) {
        const before = lowest[near - 1] as number;
        const here = lowest[near] as number;
        const after = lowest[near + 1] as number;
        if (before < least) least = before;
        if (here < least) least = here;
        if (after < least) least = after;
      }
      about[at] = least;
    }
  }
}

/** From a spot's cell to all cells that have a ball's place within so many cells between: by how many in the field, and how far it comes down then. */
function stepsWithin(
  radius: Mm,
  across: number,
): readonly { readonly step: number; readonly depth: Mm }[] {
  const cells = Array.from({ length: 2 * TILE + 1 }, (_, k) => k - TILE);
  return cells
    .flatMap((j) => cells.map((i) => ({ step: j * across + i, depth: ballDepth(radius, i, j) })))
    .filter(({ depth }) => depth >= 0);
}
