import type { Cymbal } from '../../layout/pieces/cymbal.ts';
import { type Surface, surfaceOf } from '../../rig/surface.ts';
import { apart, fillPath, type Pen, strokePath, traceDisc } from './pen.ts';
import { resized, traceTiltedDisc } from './tiltedDisc.ts';

/** The rings inside a cymbal's edge, as shares of its radius: they tell the kinds apart without colour. */
const rings: Readonly<Record<Cymbal['kind'], readonly number[]>> = {
  crash: [0.86, 0.68, 0.5],
  ride: [0.9, 0.8, 0.7, 0.6, 0.5, 0.4],
  splash: [0.7],
  china: [0.84, 0.8, 0.5],
};

const bells: Readonly<Record<Cymbal['kind'], number>> = {
  crash: 0.2,
  ride: 0.26,
  splash: 0.22,
  china: 0.24,
};

/** Crash, ride, splash, china: see-through, so that what stands below stays visible. */
export function paintCymbal(pen: Pen, cymbal: Cymbal): void {
  const edge = surfaceOf(cymbal);
  paintBrass(pen, edge, rings[cymbal.kind], bells[cymbal.kind]);
}

/** One brass disc with its bow's rings, its bell and the rod it hangs on. */
export function paintBrass(
  pen: Pen,
  edge: Surface,
  ringShares: readonly number[],
  bell: number,
): void {
  const { colours } = pen;
  traceTiltedDisc(pen, edge);
  fillPath(pen, colours.brassFill);
  strokePath(pen, colours.brass, 1.75);
  apart(pen, () => {
    pen.canvas.globalAlpha = 0.35;
    for (const share of ringShares) {
      traceTiltedDisc(pen, resized(edge, edge.radius * share));
      strokePath(pen, colours.brass, 0.75);
    }
  });
  traceTiltedDisc(pen, resized(edge, edge.radius * bell));
  fillPath(pen, colours.brassFill);
  strokePath(pen, colours.brass, 1);
  traceDisc(pen, edge.centre, Math.max(6, 1.5 * pen.px));
  fillPath(pen, colours.brass);
}
