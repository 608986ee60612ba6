import type { Vec2 } from '../../geometry/vector.ts';
import type { Box } from '../../layout/cabling.ts';
import { BOX_DEPTH, INPUT_PITCH, inputsInRow, onBox } from '../../rig/boxShape.ts';

/** Where each input sits on the box's top as drawn: the first row toward the side of the inputs. */
export function inputSpots(box: Box): readonly Vec2<'deck'>[] {
  const row = inputsInRow(box);
  const rows = box.inputs > row ? 2 : 1;
  return Array.from({ length: box.inputs }, (_, i) => {
    const line = Math.floor(i / row);
    const forward = rows === 1 ? BOX_DEPTH / 6 : BOX_DEPTH / 4 - (line * BOX_DEPTH) / 2;
    return onBox(box, forward, ((i % row) - (row - 1) / 2) * INPUT_PITCH);
  });
}

/** Screen distance between neighbouring inputs, px. */
export const inputPitch = (pxPerMm: number): number => INPUT_PITCH * pxPerMm;
