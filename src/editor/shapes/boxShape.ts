import type { Vec2 } from '../../geometry/vector.ts';
import type { Box } from '../../layout/cabling.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';

/** Sizes of the box as it is drawn, mm: inputs 40 mm apart in rows of at most 8, 20 mm free at both ends, 150 mm deep. */
const PITCH = 40;
const END = 20;
const DEPTH = 150;
const ONE_ROW = 8;

const inRow = ({ inputs }: Box): number => (inputs > ONE_ROW ? Math.ceil(inputs / 2) : inputs);

/** A point of the box: `forward` mm toward the side of its inputs, `right` mm to the right of who looks at them. */
function onBox({ x, y, turn }: Box, forward: number, right: number): Vec2<'deck'> {
  const [cos, sin] = [cosDeg(turn), sinDeg(turn)];
  return { x: x + forward * cos - right * sin, y: y + forward * sin + right * cos };
}

/** Corners on the plan, deck frame, anticlockwise, the side of the inputs first. */
export function boxOutline(box: Box): readonly Vec2<'deck'>[] {
  const half = (inRow(box) * PITCH) / 2 + END;
  return [
    onBox(box, DEPTH / 2, -half),
    onBox(box, DEPTH / 2, half),
    onBox(box, -DEPTH / 2, half),
    onBox(box, -DEPTH / 2, -half),
  ];
}

/** Where each input sits on the box's top as drawn: the first row toward the side of the inputs. */
export function inputSpots(box: Box): readonly Vec2<'deck'>[] {
  const row = inRow(box);
  const rows = box.inputs > row ? 2 : 1;
  return Array.from({ length: box.inputs }, (_, i) => {
    const line = Math.floor(i / row);
    const forward = rows === 1 ? DEPTH / 6 : DEPTH / 4 - (line * DEPTH) / 2;
    return onBox(box, forward, ((i % row) - (row - 1) / 2) * PITCH);
  });
}

/** Screen distance between neighbouring inputs, px. */
export const inputPitch = (pxPerMm: number): number => PITCH * pxPerMm;
