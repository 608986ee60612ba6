import { along, cross, unit, vec } from '../../geometry/vector.ts';
import type { Surface } from '../../rig/surface.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import { apart, fillPath, type Pen, strokePath, traceDisc } from './pen.ts';
import { traceTiltedDisc } from './tiltedDisc.ts';

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

/** How far a struck cymbal swings either way (rule W1 of the clearances), degrees. */
const SWING = 20;

/** A turned swinging cymbal: where it is at both ends of its swing, as far as the swing is seen from here. */
export function paintUprightSwing(pen: Pen, cymbal: Surface): void {
  const { normal } = cymbal;
  const aside = unit(cross(vec(0, 0, 1), normal), vec(1, 0, 0));
  apart(pen, () => {
    for (const way of [SWING, -SWING]) {
      const leaned = along(vec(0, 0, 0), normal, cosDeg(way));
      traceTiltedDisc(pen, { ...cymbal, normal: unit(along(leaned, aside, sinDeg(way)), normal) });
      pen.canvas.globalAlpha = 0.16;
      fillPath(pen, pen.colours.stick);
      pen.canvas.globalAlpha = 1;
      pen.canvas.setLineDash([6 * pen.px, 4 * pen.px]);
      strokePath(pen, pen.colours.stick, 2);
      pen.canvas.setLineDash([]);
    }
  });
}

/** A cymbal at one moment of its swing, from above or turned. */
export function paintSwung(pen: Pen, cymbal: Surface): void {
  apart(pen, () => {
    traceTiltedDisc(pen, cymbal);
    pen.canvas.globalAlpha = 0.3;
    fillPath(pen, pen.colours.stick);
    pen.canvas.globalAlpha = 1;
    strokePath(pen, pen.colours.halo, 6);
    strokePath(pen, pen.colours.stick, 3);
  });
}
