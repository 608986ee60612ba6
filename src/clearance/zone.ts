import { contours } from 'd3-contour';
import { type Vec2, type Vec3, vec } from '../geometry/vector.ts';
import { mirrored, signOf } from '../player/hands.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { type Motion, reachOf } from './micClearance.ts';
import { micPose } from './micPose.ts';
import { MovePainter, type ShiftGrid } from './movePainter.ts';
import { COARSEST, quarters, type Square, SquareGrid, TOP } from './squareGrid.ts';
import { BOX, PARTS } from './sweptMoves.ts';

/** Side of the finest cell, mm. */
const CELL: Mm = 20;
/** Side of the coarsest square, mm. */
const COARSE: Mm = CELL * COARSEST;
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
 * Rule Z1: where a mic's solids, moved over the plan at their height with their direction kept, would be struck. What sweeps paints the squares
 * of a grid, one stretch of a move after the other. Clearance changes at most as fast as the mic moves: a square whose centre is
 * farther from zero than its half diagonal is decided whole, the others are quartered down to 20 mm, and one that is full is not
 * looked at again. A last cell counts as struck when any of its points may be: the zone errs to the safe side by at most a
 * cell's diagonal and as much as a clearance may be told too low.
 */
export function struckZone(motion: Motion, solids: readonly MicSolid[], from: Vec2): Zone {
  const area = sweptArea(motion, solids, from);
  const columns = Math.ceil((area.right - area.left) / COARSE);
  const rows = Math.ceil((area.top - area.bottom) / COARSE);
  if (!(columns > 0 && rows > 0)) return { cell: CELL, rings: [] };
  const grid = new SquareGrid(columns, rows);
  const corner = { left: area.left - from.x, bottom: area.bottom - from.y };
  const to = { grid, cell: CELL, tolerance: TOLERATED, ...corner };
  paintStill(to, motion, solids);
  new MovePainter(to, motion.swept.arm, micPose(solids)).paint(motion.swept);
  return { cell: CELL, rings: outlines(grid, area) };
}

/** Clearance of the mic shifted on the plan, known as far as deciding a square of half diagonal `room` needs. */
type Clearance = (shift: Vec2, room: Mm, enough: Mm) => Mm;

function paint(to: ShiftGrid, square: Square, clearance: Clearance): void {
  const { grid, left, bottom } = to;
  if (grid.isFull(square)) return;
  const side = CELL * 2 ** square.level;
  const room = side * Math.SQRT1_2;
  const shift = { x: left + (square.column + 0.5) * side, y: bottom + (square.row + 0.5) * side };
  // A last cell is struck by whatever comes near enough; a larger square only when it is struck whole.
  const found = clearance(shift, room, square.level === 0 ? room : -room);
  if (found >= room) return;
  if (found <= -room || square.level === 0) grid.mark(square);
  else for (const quarter of quarters(square)) paint(to, quarter, clearance);
}

/** Legs and swinging cymbals, all together. */
function paintStill(to: ShiftGrid, motion: Motion, solids: readonly MicSolid[]): void {
  const { grid } = to;
  const nothing = new Int32Array();
  const clearance: Clearance = ({ x, y }, room, enough) => {
    const moved = { solids: shifted(solids, x, y) };
    const bounds = { limit: room + TOLERATED, enough, tolerance: TOLERATED, moves: nothing };
    return reachOf(motion, moved, bounds).clearance;
  };
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      paint(to, { level: TOP, column, row }, clearance);
    }
  }
}

function shifted(solids: readonly MicSolid[], dx: Mm, dy: Mm): readonly MicSolid[] {
  const move = ({ x, y, z }: Vec3): Vec3 => vec(x + dx, y + dy, z);
  return solids.map(({ part, capsule }) => ({
    part,
    capsule: { a: move(capsule.a), b: move(capsule.b), radius: capsule.radius },
  }));
}

interface Area {
  readonly left: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
}

/** Where a mic's own spot can be while anything that moves can reach it: all that is swept, grown by the mic, with a free cell around. */
function sweptArea({ swept, swings, legs }: Motion, solids: readonly MicSolid[], from: Vec2): Area {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  const take = ({ x, y }: Vec2, radius: Mm): void => {
    left = Math.min(left, x - radius);
    right = Math.max(right, x + radius);
    bottom = Math.min(bottom, y - radius);
    top = Math.max(top, y + radius);
  };
  for (const [index, { move }] of swept.moves.entries()) {
    for (let at = index * PARTS * BOX; at < (index + 1) * PARTS * BOX; at += BOX) {
      const corner = (k: number): Vec3 =>
        vec(swept.moveBoxes[at + k] ?? 0, swept.moveBoxes[at + k + 1] ?? 0, 0);
      take(mirrored(corner(0), signOf(move.side)), 0);
      take(mirrored(corner(3), signOf(move.side)), 0);
    }
  }
  for (const { centre, radius } of swings) take(centre, radius);
  for (const { thigh, shin } of legs) {
    for (const { a, b, radius } of [thigh, shin]) {
      take(a, radius);
      take(b, radius);
    }
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

function outlines(grid: SquareGrid, { left, bottom }: Area): readonly Ring[] {
  const size: [number, number] = [grid.across(0), grid.rows * COARSEST];
  const [contour] = contours().size(size).smooth(false).thresholds([0.5])([...grid.cells()]);
  return (contour?.coordinates ?? []).flatMap((polygon) =>
    polygon.map((ring) =>
      ring.map(([column, row]) => ({
        x: left + (column ?? 0) * CELL,
        y: bottom + (row ?? 0) * CELL,
      })),
    ),
  );
}
