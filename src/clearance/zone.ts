import { contours } from 'd3-contour';
import { type Vec2, type Vec3, vec } from '../geometry/vector.ts';
import { signOf } from '../player/hands.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { type Motion, reachOf } from './micClearance.ts';
import { narrowed, neighbourhood, regionOf } from './neighbourhood.ts';
import { BOX, PARTS } from './sweptMoves.ts';

/** Side of the finest cell, mm. */
const CELL: Mm = 20;
/** Side of the coarsest square, in cells: a power of two. */
const COARSEST = 16;
const HALF_DIAGONAL = Math.SQRT1_2;
/** How exactly a clearance has to be known to decide a square, mm: to the safe side. */
const TOLERATED: Mm = 1;

/** A closed line on the plan. */
export type Ring = readonly Vec2[];

/** Forbidden ground with the size of its cells (mm). */
export interface Zone {
  readonly cell: Mm;
  /** Outer rings and holes, even-odd; kit frame. */
  readonly rings: readonly Ring[];
}

/**
 * Rule Z1: where a mic's solids, moved over the plan at their height with their direction kept, would be struck. Clearance changes at most
 * as fast as the mic moves: a square whose centre is farther from zero than its half diagonal is decided whole, the others are
 * quartered down to 20 mm. A last cell counts as struck when any of its points may be: the zone errs to the safe side by at most a
 * cell's diagonal.
 */
export function struckZone(motion: Motion, solids: readonly MicSolid[], from: Vec2): Zone {
  const area = sweptArea(motion, solids, from);
  const columns = COARSEST * Math.ceil((area.right - area.left) / (CELL * COARSEST));
  const rows = COARSEST * Math.ceil((area.top - area.bottom) / (CELL * COARSEST));
  if (!(columns > 0 && rows > 0)) return { cell: CELL, rings: [] };
  const struck = new Float64Array(columns * rows);
  const look = (square: Square, entries: Int32Array): void => {
    const { column, row, cells } = square;
    const half = (cells * CELL) / 2;
    const room = 2 * half * HALF_DIAGONAL;
    const dx = area.left + column * CELL + half - from.x;
    const dy = area.bottom + row * CELL + half - from.y;
    const moved = shifted(solids, dx, dy);
    const among = narrowed(motion.swept, entries, regionOf(moved, half, half), room);
    // A last cell is struck by whatever comes near enough; a larger square only when it is struck whole.
    const enough = cells === 1 ? room : -room;
    const bounds = { limit: room + TOLERATED, enough, tolerance: TOLERATED, among };
    const { clearance } = reachOf(motion, { solids: moved }, bounds);
    if (clearance >= room) return;
    if (clearance <= -room || cells === 1) fill(struck, columns, square);
    else for (const quarter of quarters(square)) look(quarter, among);
  };
  const everywhere = regionOf(solids, area.right - area.left, area.top - area.bottom);
  const entries = neighbourhood(motion.swept, everywhere, COARSEST * CELL);
  for (let row = 0; row < rows; row += COARSEST) {
    for (let column = 0; column < columns; column += COARSEST) {
      look({ column, row, cells: COARSEST }, entries);
    }
  }
  return {
    cell: CELL,
    rings: outlines(struck, { columns, rows, left: area.left, bottom: area.bottom }),
  };
}

interface Square {
  readonly column: number;
  readonly row: number;
  /** Cells along a side. */
  readonly cells: number;
}

function quarters({ column, row, cells }: Square): readonly Square[] {
  const half = cells / 2;
  return [
    { column, row, cells: half },
    { column: column + half, row, cells: half },
    { column, row: row + half, cells: half },
    { column: column + half, row: row + half, cells: half },
  ];
}

function fill(struck: Float64Array, columns: number, { column, row, cells }: Square): void {
  for (let r = row; r < row + cells; r++) {
    struck.fill(1, r * columns + column, r * columns + column + cells);
  }
}

function shifted(solids: readonly MicSolid[], dx: Mm, dy: Mm): readonly MicSolid[] {
  const move = ({ x, y, z }: Vec3): Vec3 => vec(x + dx, y + dy, z);
  return solids.map(({ part, capsule }) => ({
    part,
    capsule: { a: move(capsule.a), b: move(capsule.b), radius: capsule.radius },
  }));
}

/** Where a mic's own spot can be while anything that moves can reach it: all that is swept, grown by the mic, with a free cell around. */
function sweptArea(motion: Motion, solids: readonly MicSolid[], from: Vec2) {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  const take = (x: Mm, y: Mm, radius: Mm): void => {
    left = Math.min(left, x - radius);
    right = Math.max(right, x + radius);
    bottom = Math.min(bottom, y - radius);
    top = Math.max(top, y + radius);
  };
  const { moveBoxes, moves } = motion.swept;
  for (let at = 0; at < moveBoxes.length; at += BOX) {
    const sign = signOf(moves[Math.floor(at / BOX / PARTS)]?.move.side ?? 'right');
    take(sign * (moveBoxes[at] ?? 0), moveBoxes[at + 1] ?? 0, 0);
    take(sign * (moveBoxes[at + 3] ?? 0), moveBoxes[at + 4] ?? 0, 0);
  }
  for (const { centre, radius } of motion.swings) take(centre.x, centre.y, radius);
  for (const { thigh, shin } of motion.legs) {
    for (const { a, radius } of [thigh, shin]) take(a.x, a.y, radius);
    take(shin.b.x, shin.b.y, shin.radius);
  }
  const size = Math.max(
    0,
    ...solids.flatMap(({ capsule: { a, b, radius } }) =>
      [a, b].map((p) => Math.hypot(p.x - from.x, p.y - from.y) + radius),
    ),
  );
  const grow = size + 2 * CELL;
  return { left: left - grow, right: right + grow, bottom: bottom - grow, top: top + grow };
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly left: Mm;
  readonly bottom: Mm;
}

function outlines(struck: Float64Array, { columns, rows, left, bottom }: Grid): readonly Ring[] {
  const [contour] = contours().size([columns, rows]).smooth(false).thresholds([0.5])([...struck]);
  return (contour?.coordinates ?? []).flatMap((polygon) =>
    polygon.map((ring) =>
      ring.map(([column, row]) => ({
        x: left + (column ?? 0) * CELL,
        y: bottom + (row ?? 0) * CELL,
      })),
    ),
  );
}
