import { along } from '../../geometry/vector.ts';
import type { HiHat } from '../../layout/pieces/hiHat.ts';
import { surfaceOf } from '../../rig/surface.ts';
import { paintBrass } from './cymbal.ts';
import { fillPath, type Pen, strokePath, traceDisc } from './pen.ts';
import { traceTiltedDisc } from './tiltedDisc.ts';

/** Hi-hat: the lower cymbal where the lean shows it, the top one risen by its opening, the clutch on the rod. */
export function paintHiHat(pen: Pen, hiHat: HiHat): void {
  const closed = surfaceOf(hiHat);
  traceTiltedDisc(pen, closed);
  fillPath(pen, pen.colours.brassFill);
  strokePath(pen, pen.colours.brass, 1);
  const top = { ...closed, centre: along(closed.centre, closed.normal, hiHat.opening) };
  paintBrass(pen, top, [0.92, 0.62], 0.3);
  traceDisc(pen, top.centre, 16);
  fillPath(pen, pen.colours.hardwareFill);
  strokePath(pen, pen.colours.hardware, 1.25);
  traceDisc(pen, top.centre, 4);
  fillPath(pen, pen.colours.hardware);
}
