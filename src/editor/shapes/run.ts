import type { Vec2 } from '../../geometry/vector.ts';
import { apart, type Pen, strokePath, strokeThick, traceLine } from './pen.ts';

/** Outer diameter of a mic cable, mm. */
const CABLE = 6.5;

/** A cable's way over the deck (deck frame). */
export function paintRun(pen: Pen, route: readonly Vec2<'deck'>[], strong: boolean): void {
  apart(pen, () => {
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    traceLine(pen, ...route);
    strokePath(pen, pen.colours.deck, strong ? 6 : 4);
    strokeThick(pen, pen.colours.cable, CABLE, strong ? 3 : 1.75);
  });
}
