import type { Mm } from '../units/quantity.ts';
import { SPOT } from './floorField.ts';

/** Farthest that the height told may lie below the lowest true one within as much of a spot (rule F1), mm. */
export const BELOW: Mm = 15;
/** Farthest that an axis may be from where it is taken to be, mm. */
export const BOW: Mm = 0.45;
/**
 * Rule F3: how much wider than they are balls count on the plan, mm. The place of an axis is kept as the cell that it was seen in, and its ball counts
 * for the whole of a spot's cell as if both were where they are nearest. So it may count for a spot that is farther from the true place by a
 * cell's diagonal and a half, by what the place is off, and by the widening: together 15 mm.
 */
export const WIDER: Mm = BELOW - 1.5 * SPOT * Math.SQRT2 - BOW;
/** Farthest that a place of an axis is above or below the nearest sample of it, mm. */
export const FALL: Mm = 4;
/** Heights are kept as single floats: as exact as this, mm. */
const ROUNDING: Mm = 1e-3;
/** By how much all heights are lowered, mm. */
export const LOWER: Mm = BOW + FALL + ROUNDING;
