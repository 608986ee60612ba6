import type { Mm } from '../units/quantity.ts';
import { type AxisField, TILE } from './axisField.ts';
import { ballDepth } from './ballDepth.ts';
import type { FloorBall } from './floorBudget.ts';
import { SPOT, type StickFloor } from './floorField.ts';

/** Whether balls of a radius reach no farther than a tile. */
export const isSmall = ({ reach }: FloorBall): boolean => reach <= TILE * SPOT;

/**
 * Lowers a field of spots to the under sides of small balls about the places of axes (rule F3), spot by spot. How far a ball comes down depends on how many
 * whole cells lie between: so the lowest of each cell and all that touch it is found first, and spots look at that from so many cells off.
 */
export function lowerToSmallBalls(floor: StickFloor, axes: AxisField, ball: FloorBall): void {
  const { border, across, rows, lowest } = axes;
  const { columns, heights } = floor;
  const steps = stepsWithin(ball, across);
  const spans = Array.from({ length: rows }, (_, row) => seenAbout(axes, row));
  spreadLowest(axes, spans);
  for (let y = 0; y < floor.rows; y++) {
    const { first, end } = spans[Math.floor((y + border) / TILE)] as Span;
    const from = y * columns + Math.max(0, first - border);
    const to = y * columns + Math.min(columns, end - border);
    const start = (y + border) * across + border - y * columns;
    for (const { step, depth } of steps) {
      const off = start + step;
      for (let spot = from; spot < to; spot++) {
        const under = (lowest[spot + off] as number) - ball.lowered - depth;
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

/** Lowers each cell of an axis' field to the lowest of the eight about it. */
function spreadLowest({ across, lowest }: AxisField, spans: readonly Span[]): void {
  // The rows as they were before: this one, and the lowest of it and the two beside it.
  let before = new Float32Array(across);
  let here = lowest.slice(0, across);
  const about = new Float32Array(across);
  for (let row = 1; row + 1 < spans.length * TILE; row++) {
    [before, here] = [here, before];
    const start = row * across;
    here.set(lowest.subarray(start, start + across));
    const { first, end } = spans[Math.floor(row / TILE)] as Span;
    if (end === 0) continue;
    for (let column = first - 1; column <= end; column++) {
      const least = lowest[start + across + column] as number;
      about[column] = Math.min(before[column] as number, here[column] as number, least);
    }
    for (let column = first; column < end; column++) {
      const least = Math.min(about[column - 1] as number, about[column] as number);
      lowest[start + column] = Math.min(least, about[column + 1] as number);
    }
  }
}

/** From a spot's cell to all cells that have a ball's place within so many cells between: by how many in the field, and how far it comes down then. */
function stepsWithin(
  ball: FloorBall,
  across: number,
): readonly { readonly step: number; readonly depth: Mm }[] {
  const cells = Array.from({ length: 2 * TILE + 1 }, (_, k) => k - TILE);
  return cells
    .flatMap((j) => cells.map((i) => ({ step: j * across + i, depth: ballDepth(ball, i, j) })))
    .filter(({ depth }) => depth >= 0);
}
