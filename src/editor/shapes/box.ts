import type { Box } from '../../layout/cabling.ts';
import { boxCorners } from '../../rig/boxShape.ts';
import { showsDigits } from './boxDigits.ts';
import { inputSpots } from './boxShape.ts';
import { fillPath, type Pen, strokePath, traceDisc, traceLine, tracePolygon } from './pen.ts';

/** Radius of a panel connector, mm. */
const CONNECTOR = 12;

/** The sub-box with one ring for every input; a filled ring is plugged (deck frame). From near by numbers stand there instead. */
export function paintBox(pen: Pen, box: Box, plugged: ReadonlySet<number>): void {
  const { colours } = pen;
  const outline = boxCorners(box);
  tracePolygon(pen, outline);
  fillPath(pen, colours.plate);
  pen.canvas.lineJoin = 'round';
  strokePath(pen, colours.cable, 2);
  const [left, right] = outline;
  if (left && right) {
    traceLine(pen, left, right);
    strokePath(pen, colours.cable, 4);
  }
  if (showsDigits(1 / pen.px)) return;
  for (const [i, spot] of inputSpots(box).entries()) {
    traceDisc(pen, spot, CONNECTOR);
    if (plugged.has(i + 1)) fillPath(pen, colours.cable);
    strokePath(pen, colours.cable, 1);
  }
}
