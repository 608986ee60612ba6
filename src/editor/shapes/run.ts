import type { Vec2 } from '../../geometry/vector.ts';
import { apart, type Pen, strokePath, strokeThick, traceLine } from './pen.ts';

/** Outer diameter of a mic cable, mm. */
const CABLE = 6.5;

/** A run is strong when its mic is selected, faint when another mic is. */
export type RunWeight = 'plain' | 'strong' | 'faint';

/** A cable's way over the deck (deck frame). */
export function paintRun(pen: Pen, route: readonly Vec2<'deck'>[], weight: RunWeight): void {
  const strong = weight === 'strong';
  apart(pen, () => {
    pen.canvas.globalAlpha = weight === 'faint' ? 0.4 : 1;
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    traceLine(pen, ...route);
    strokePath(pen, pen.colours.deck, strong ? 6 : 4);
    strokeThick(pen, pen.colours.cable, CABLE, strong ? 3 : 1.75);
  });
}
