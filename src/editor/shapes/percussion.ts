import type { Percussion } from '../../layout/pieces/percussion.ts';
import { surfaceOf } from '../../rig/surface.ts';
import { fillPath, type Pen, strokePath } from './pen.ts';
import { resized, traceShellBelow, traceTiltedDisc } from './tiltedDisc.ts';

/** Cowbell, block and the like: the body below and the struck spot on top of it. */
export function paintPercussion(pen: Pen, percussion: Percussion): void {
  const top = surfaceOf(percussion);
  traceShellBelow(pen, top, percussion.depth);
  fillPath(pen, pen.colours.shell);
  strokePath(pen, pen.colours.hoop, 1);
  traceTiltedDisc(pen, top);
  fillPath(pen, pen.colours.hardwareFill);
  strokePath(pen, pen.colours.hoop, 1.5);
  traceTiltedDisc(pen, resized(top, top.radius * 0.55));
  strokePath(pen, pen.colours.hardware, 1);
}
