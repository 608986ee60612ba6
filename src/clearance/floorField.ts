import type { Vec2 } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';

/** Distance between the spots of the field, the middles of square cells, mm. */
export const SPOT: Mm = 6;

/** The lowest height swept over spots of the plan: `heights[row * columns + column]` over (left + column SPOT, bottom + row SPOT). */
export interface StickFloor {
  /** Half a spot beyond a whole number of them from the throne, as `bottom`: cells border on its middle lines. */
  readonly left: Mm;
  readonly bottom: Mm;
  readonly columns: number;
  readonly rows: number;
  /** mm above the deck; infinite where nothing passes. */
  readonly heights: Float32Array;
}

/**
 * Rule F4: the height told over any point of the plan is that of the cell it lies in, so rule F1 holds for the point. Infinite outside the field,
 * where nothing passes.
 *
 * @param at Kit frame, mm.
 * @returns mm above the deck.
 */
export function heightOver({ left, bottom, columns, rows, heights }: StickFloor, at: Vec2): Mm {
  const column = Math.round((at.x - left) / SPOT);
  const row = Math.round((at.y - bottom) / SPOT);
  const isIn = column >= 0 && column < columns && row >= 0 && row < rows;
  return isIn
    ? (heights[row * columns + column] ?? Number.POSITIVE_INFINITY)
    : Number.POSITIVE_INFINITY;
}
