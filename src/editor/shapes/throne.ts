import { vec } from '../../geometry/vector.ts';
import type { Throne } from '../../layout/pieces/throne.ts';
import { fillPath, type Pen, strokePath, traceDisc } from './pen.ts';

/** The seat, at the kit frame's origin. */
export function paintThrone(pen: Pen, throne: Throne): void {
  const centre = vec(0, 0, 0);
  traceDisc(pen, centre, throne.diameter / 2);
  fillPath(pen, pen.colours.hardwareFill);
  strokePath(pen, pen.colours.hardware, 1.5);
  traceDisc(pen, centre, throne.diameter * 0.42);
  strokePath(pen, pen.colours.hardware, 0.75);
}
