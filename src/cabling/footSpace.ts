import { circleCorners } from '../geometry/grow.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Pedal } from '../layout/pieces/pedal.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';

/** How far the foot works beyond the pedal: behind its heel, to both sides, before its toe. Common practice, no source. */
const BEHIND: Mm = 100;
const BESIDE: Mm = 50;
const BEFORE: Mm = 20;
/** Half the width of the foot's way from the throne. Common practice, no source. */
const WAY_HALF_WIDTH: Mm = 110;

/**
 * F1 The player's foot space at a pedal, as points of the kit frame whose convex hull it is: the rectangle round the pedal
 *    where the foot works, and the way to it from under the throne's centre, the origin. A foot that slides off a pedal or comes
 *    back to it never meets a cable.
 */
export function footSpace({ x, y, turn, length, width }: Pedal): Vec2[] {
  const cos = cosDeg(turn);
  const sin = sinDeg(turn);
  const at = (forward: Mm, left: Mm): Vec2 => ({
    x: x + forward * cos - left * sin,
    y: y + forward * sin + left * cos,
  });
  const side = width / 2 + BESIDE;
  return [
    at(-BEHIND, -side),
    at(length + BEFORE, -side),
    at(length + BEFORE, side),
    at(-BEHIND, side),
    ...circleCorners<'kit'>({ x: 0, y: 0 }, WAY_HALF_WIDTH),
  ];
}
