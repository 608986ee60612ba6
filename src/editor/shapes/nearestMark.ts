import type { Vec2 } from '../../geometry/vector.ts';
import { type Verdict, verdictInk } from '../palette.ts';
import { apart, type Pen, strokePath, traceDisc, traceLine } from './pen.ts';

/** A dimension shorter than this could be overlooked: a ring is drawn round it, px. */
const SHORT = 26;
const RING = 14;

/** The place of least clearance: a dimension line between mic and moving part with a tick at both ends, ringed when it is short. */
export function paintNearest(pen: Pen, ends: readonly [Vec2, Vec2], verdict: Verdict | null): void {
  const [a, b] = ends;
  const colour = verdictInk(verdict, pen.colours);
  const reach = Math.hypot(b.x - a.x, b.y - a.y);
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  apart(pen, () => {
    if (reach < SHORT * pen.px) {
      traceDisc(pen, middle, RING * pen.px);
      strokePath(pen, pen.colours.halo, 5);
      strokePath(pen, colour, 2);
    }
    if (reach < pen.px) return;
    const across = {
      x: (-(b.y - a.y) / reach) * 5 * pen.px,
      y: ((b.x - a.x) / reach) * 5 * pen.px,
    };
    traceLine(pen, a, b);
    strokePath(pen, pen.colours.halo, 5);
    strokePath(pen, colour, 2);
    for (const end of ends) {
      traceLine(
        pen,
        { x: end.x + across.x, y: end.y + across.y },
        { x: end.x - across.x, y: end.y - across.y },
      );
      strokePath(pen, colour, 2);
    }
  });
}
