import type { Vec2 } from '../geometry/vector.ts';
import type { Box } from '../layout/cabling.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';

/** Sizes of a drum sub-box. Common practice, no source. */
export const INPUT_PITCH: Mm = 40;
export const BOX_DEPTH: Mm = 150;
const END_MARGIN: Mm = 20;
const ONE_ROW = 8;

/**
 * B1 A box of up to 8 inputs has them in one row, a larger one in two rows of equal length, 40 mm apart, the first at the
 *    left end as seen by someone who looks at the inputs; the second row begins at the left end again.
 * B2 It is as wide as a row with 20 mm at both ends, and 150 mm deep; its place is its centre.
 */
export const inputsInRow = ({ inputs }: Box): number =>
  inputs > ONE_ROW ? Math.ceil(inputs / 2) : inputs;

/** The point `forward` mm from the box's centre toward the side of its inputs and `right` mm to the right of who looks at them. */
export function onBox({ x, y, turn }: Box, forward: Mm, right: Mm): Vec2<'deck'> {
  const cos = cosDeg(turn);
  const sin = sinDeg(turn);
  return { x: x + forward * cos - right * sin, y: y + forward * sin + right * cos };
}

/** Corners of the box on the plan, deck frame, anticlockwise, the two on the side of the inputs first. */
export function boxCorners(box: Box): readonly Vec2<'deck'>[] {
  const half = (inputsInRow(box) * INPUT_PITCH) / 2 + END_MARGIN;
  const front = BOX_DEPTH / 2;
  return [
    onBox(box, front, -half),
    onBox(box, front, half),
    onBox(box, -front, half),
    onBox(box, -front, -half),
  ];
}
