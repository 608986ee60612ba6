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
