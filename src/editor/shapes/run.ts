import type { Vec2 } from '../../geometry/vector.ts';
import type { LoomLine } from '../../report/report.ts';
import { apart, fillPath, type Pen, strokePath, strokeThick, traceDisc, traceLine } from './pen.ts';

/** Outer diameter of a mic cable, mm. */
const CABLE = 6.5;
/** Least width of a single cable, px; a bundle is as much wider as its real width is, but for the tightest packing. */
const LEAST = 1.75;
const STRONG = 3;
/** Least radius of a breakout, px. */
const BREAKOUT = 3.5;

/** Dashes of a cable without a way and the gaps between them, px: no other line is broken so wide. */
const BROKEN = [9, 7] as const;

/** A line is strong when the selected mic's cable lies in it, faint when only others do. */
export type RunWeight = 'plain' | 'strong' | 'faint';

/** A line of the loom over the deck (deck frame): as wide as the cables in it together, broken where it is no way. */
export function paintStretch(
  pen: Pen,
  { points, mics, hasNoWay }: Pick<LoomLine, 'points' | 'mics' | 'hasNoWay'>,
  weight: RunWeight,
): void {
  const wide = Math.sqrt(mics.length);
  const least = Math.max(LEAST * wide, weight === 'strong' ? STRONG : 0);
  apart(pen, () => {
    pen.canvas.globalAlpha = weight === 'faint' ? 0.4 : 1;
    // Round ends would fill the gaps.
    pen.canvas.lineCap = hasNoWay ? 'butt' : 'round';
    pen.canvas.lineJoin = 'round';
    if (hasNoWay) pen.canvas.setLineDash(BROKEN.map((length) => length * pen.px));
    traceLine(pen, ...points);
    strokePath(pen, pen.colours.deck, least + 2.5);
    strokeThick(pen, pen.colours.cable, CABLE * wide, least);
  });
}

/** Where cables leave the bundle: a ring round the tie that holds them. */
export function paintBreakout(
  pen: Pen,
  { x, y }: Vec2<'deck'>,
  cables: number,
  weight: RunWeight,
): void {
  const radius = Math.max(0.6 * CABLE * Math.sqrt(cables), BREAKOUT * pen.px);
  apart(pen, () => {
    pen.canvas.globalAlpha = weight === 'faint' ? 0.4 : 1;
    traceDisc(pen, { x, y }, radius);
    fillPath(pen, pen.colours.deck);
    strokePath(pen, pen.colours.cable, 1.5);
  });
}
