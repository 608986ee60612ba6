import type { Mm } from '../units/quantity.ts';
import type { FloorBall } from './floorBudget.ts';
import { SPOT } from './floorField.ts';

/**
 * How far a ball comes down below its middle over any point of a cell (rule F3), when its place is in another one with `across` and `ahead` whole cells
 * between, mm; minus infinite where it does not reach.
 */
export function ballDepth({ radius, bow, grown }: FloorBall, across: number, ahead: number): Mm {
  const off = Math.max(0, SPOT * Math.sqrt(across * across + ahead * ahead) - bow);
  const large = radius + grown;
  return off < large ? Math.sqrt(large * large - off * off) : Number.NEGATIVE_INFINITY;
}
