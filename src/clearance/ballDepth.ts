import type { Mm } from '../units/quantity.ts';
import { BOW, GROWN } from './floorBudget.ts';
import { SPOT } from './floorField.ts';

/**
 * How far a ball comes down below its middle over any point of a cell (rule F3), when its place is in another one with `across` and `ahead` whole cells
 * between, mm; minus infinite where it does not reach.
 */
export function ballDepth(radius: Mm, across: number, ahead: number): Mm {
  const off = Math.max(0, SPOT * Math.sqrt(across * across + ahead * ahead) - BOW);
  const grown = radius + GROWN;
  return off < grown ? Math.sqrt(grown * grown - off * off) : Number.NEGATIVE_INFINITY;
}
