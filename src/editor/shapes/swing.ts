import type { Surface } from '../../rig/surface.ts';
import { apart, fillPath, type Pen, strokePath, traceDisc } from './pen.ts';

/** The ground a swinging cymbal sweeps: however it swings about its centre, its edge stays inside its own radius. */
export function paintSwing(pen: Pen, cymbal: Surface): void {
  apart(pen, () => {
    traceDisc(pen, cymbal.centre, cymbal.radius);
    pen.canvas.globalAlpha = 0.16;
    fillPath(pen, pen.colours.stick);
    pen.canvas.globalAlpha = 1;
    pen.canvas.setLineDash([6 * pen.px, 4 * pen.px]);
    strokePath(pen, pen.colours.stick, 2);
  });
}
