import type { Ink } from '../ink/ink.ts';
import type { Box } from '../labels/placeLabels.ts';
import type { Palette } from '../palette.ts';

/** What a text of the drawing's foot stands on: nothing that runs on under it is read with it (screen px). */
export function paintPlate(
  canvas: Ink,
  { left, top, width, height }: Box,
  { plate }: Pick<Palette, 'plate'>,
): void {
  canvas.beginPath();
  canvas.roundRect(left, top, width, height, 7);
  canvas.fillStyle = plate;
  canvas.globalAlpha = 0.95;
  canvas.fill();
  canvas.globalAlpha = 1;
}
