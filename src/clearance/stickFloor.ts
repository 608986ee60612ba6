import { contours } from 'd3-contour';
import type { Vec2 } from '../geometry/vector.ts';
import { type ArmPart, POSITION } from '../player/arm.ts';
import type { Mm } from '../units/quantity.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import { BOWS, MoveStretches, PIECES, partOf, stretchOf } from './moveStretches.ts';
import type { SweptMoves } from './sweptMoves.ts';
import { UnderSides } from './underSides.ts';
import type { Ring } from './zone.ts';

/** How far a point of a cell is from its middle at most, mm. */
const ACROSS: Mm = SPOT * Math.SQRT1_2;
/** Farthest that the height told may lie below the true one, mm. */
export const BELOW: Mm = 15;
/**
 * Stretches of a move are halved until a part's farthest place from their middle, and how far the middle itself is from any of its places, are together
 * at most this, mm.
 */
const LOOSE: Mm = BELOW - ACROSS;
/** Index into the arm's parts. */
const FOREARM = 2;
/** How often every move is halved before its stretches are put in order. */
const FIRST_HALVINGS = 3;

/** A rectangle of the plan, kit frame, mm. */
export interface PlanArea {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly right: Mm;
  readonly top: Mm;
}

/**
 * Rule F1: the stick floor. Every stick, hand and forearm is looked at in stretches of time so short that no point is ever more than
 * 6 mm from its place in the middle of the stretch (rule C5), and thickened by as much and by half the diagonal of a cell: the height is never
 * above the true one over any point of the cell about its spot, and never more than 15 mm below the lowest true height within 15 mm of the spot. The lowest stretches come first, so that
 * most others are known to lie above the field as a whole.
 */
export function stickFloor(swept: SweptMoves, area: PlanArea): StickFloor {
  const columns = Math.max(1, Math.ceil((area.right - area.left) / SPOT) + 1);
  const rows = Math.max(1, Math.ceil((area.top - area.bottom) / SPOT) + 1);
  const heights = new Float32Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  const floor = { left: area.left, bottom: area.bottom, columns, rows, heights };
  const sweep = new Sweep(swept, new UnderSides(floor));
  for (const piece of sweep.lowestFirst()) sweep.lower(piece);
  return floor;
}

/** The pieces of the moves, brought down on a field. */
class Sweep {
  private readonly stretches: MoveStretches;
  private readonly field: UnderSides;

  constructor(swept: SweptMoves, field: UnderSides) {
    this.stretches = new MoveStretches(swept);
    this.field = field;
  }

  lowestFirst(): readonly number[] {
    let pieces = [...this.stretches.whole()];
    for (let i = 0; i < FIRST_HALVINGS; i++) {
      pieces = pieces.flatMap((piece) => {
        const first = this.stretches.halved(piece);
        return [first, first + PIECES];
      });
    }
    const bottoms = new Map(pieces.map((piece) => [piece, this.bottom(piece)]));
    return pieces.sort((p, q) => (bottoms.get(p) ?? 0) - (bottoms.get(q) ?? 0));
  }

  /** The lowest that any point of a piece can be. */
  private bottom(piece: number): Mm {
    const { at, radius } = this.part(piece);
    const { middles, slack } = this.stretches;
    const a = stretchOf(piece) * POSITION + at + 2;
    const lower = Math.min(middles[a] as number, middles[a + 3] as number);
    return lower - radius - (slack[piece] as number);
  }

  lower(piece: number): void {
    const { at, radius } = this.part(piece);
    const slack = this.stretches.slack[piece] as number;
    const a = stretchOf(piece) * POSITION + at;
    const { field } = this;
    field.take(this.stretches.middles, a, radius + slack + ACROSS);
    if (field.isBelow()) return;
    if (slack + this.offMiddle(piece) <= LOOSE) {
      field.lower();
      return;
    }
    const first = this.stretches.halved(piece);
    this.lower(first);
    this.lower(first + PIECES);
  }

  /** How far the middle of a piece's places may be from where the part itself is on the way (rule C5), mm. */
  private offMiddle(piece: number): Mm {
    const { bows, slack } = this.stretches;
    const part = partOf(piece);
    if (part === FOREARM) return slack[piece] as number;
    const row = stretchOf(piece) * BOWS;
    return Math.max(bows[row] as number, bows[row + 1] as number, bows[row + 2] as number);
  }

  private part(piece: number): ArmPart {
    return this.stretches.swept.arm.parts[partOf(piece)] as ArmPart;
  }
}

/** Ground over which something passes at or below a height: closed rings, even-odd, kit frame. */
export interface HeightContour {
  readonly height: Mm;
  readonly rings: readonly Ring[];
}

/**
 * Contours of the stick floor at the given heights (mm), lowest first. Rule F2: they err to the safe side too. Before lines are drawn between the middles
 * of cells, every cell takes the lowest height of its neighbours, so that all four middles about a point are at or below the height over it: what passes
 * at or below a height lies inside its line, and the line at most two cells' diagonals beyond.
 */
export function floorContours(floor: StickFloor, levels: readonly Mm[]): readonly HeightContour[] {
  const { left, bottom, columns, rows } = floor;
  const lifted = Array.from(lowestAbout(floor), (height) =>
    Number.isFinite(height) ? -height : -NOTHING,
  );
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

/** Where nothing passes: higher than anything, mm. */
const NOTHING: Mm = 1e6;

/** For every cell the lowest height of it and its eight neighbours: first along the rows, then across them. */
function lowestAbout({ columns, rows, heights }: StickFloor): Float32Array {
  const along = lowestOfThree(heights, 1, columns);
  return lowestOfThree(along, columns, rows);
}

/** For every entry the lowest of it and those a step before and after, of `count` in a line. */
function lowestOfThree(heights: Float32Array, step: number, count: number): Float32Array {
  return heights.map((height, i) => {
    const place = Math.floor(i / step) % count;
    const before = place > 0 ? (heights[i - step] as number) : height;
    const after = place < count - 1 ? (heights[i + step] as number) : height;
    return Math.min(height, before, after);
  });
}
