import type { Footprint } from '../../rig/placed.ts';
import { fillPath, type Pen, strokePath, strokeThick, traceDisc, traceLine } from './pen.ts';

/** Width of a leg's tube and radius of its rubber foot, mm: for drawing only. */
const LEG = 12;
const FOOT = 13;

/** What stands on the deck: legs from the hub to their feet, or a disc. */
export function paintFootprint(pen: Pen, footprint: Footprint, colour: string): void {
  const { canvas, colours } = pen;
  const { hub, hubRadius, feet } = footprint;
  canvas.lineCap = 'round';
  for (const foot of feet) {
    traceLine(pen, hub, foot);
    strokeThick(pen, colours.deck, LEG + 4 * pen.px, 4);
    traceLine(pen, hub, foot);
    strokeThick(pen, colour, LEG, 2);
    traceDisc(pen, foot, Math.max(FOOT, 2 * pen.px));
    fillPath(pen, colour);
  }
  traceDisc(pen, hub, Math.max(hubRadius, 2.5 * pen.px));
  fillPath(pen, feet.length === 0 ? colours.hardwareFill : colours.deck);
  strokePath(pen, colour, 1.5);
}
