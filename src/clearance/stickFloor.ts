import { contours } from 'd3-contour';
import type { Vec2 } from '../geometry/vector.ts';
import { type ArmPart, POSITION } from '../player/arm.ts';
import type { Mm } from '../units/quantity.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import { MoveStretches, PIECES, partOf, stretchOf } from './moveStretches.ts';
import type { SweptMoves } from './sweptMoves.ts';
import { UnderSides } from './underSides.ts';
import type { Ring } from './zone.ts';

/** Stretches of a move are halved until no point of a part is farther than this from its place in their middle, mm. */
const STEP: Mm = 4;
/** The field is lowered by this much more than needed, so that what comes just below it needs no look of its own, mm. */
const AHEAD: Mm = 3;
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
 * 4 mm from its place in the middle of the stretch (rule C5), and thickened by as much: the height is never above the true one,
 * and never more than 15 mm below the lowest true height within 10 mm of the spot. The lowest stretches come first, so that
 * most others are known to lie above the field as a whole.
 */
export function stickFloor(swept: SweptMoves, area: PlanArea): StickFloor {
  const columns = Math.max(1, Math.floor((area.right - area.left) / SPOT) + 1);
  const rows = Math.max(1, Math.floor((area.top - area.bottom) / SPOT) + 1);
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
    field.take(this.stretches.middles, a, radius + slack);
    if (field.isBelow()) return;
    if (slack <= STEP) {
      field.take(this.stretches.middles, a, radius + slack + AHEAD);
      field.lower();
      return;
    }
    const first = this.stretches.halved(piece);
    this.lower(first);
    this.lower(first + PIECES);
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
