import { wrapDegrees } from '../../units/angle.ts';
import type { Degrees, Mm } from '../../units/quantity.ts';

const GRAIN = 1e6;

/** A computed number without the noise of arithmetic: rounded to a millionth of a mm or degree, never -0. */
export const tidy = (value: number): number => Math.round(value * GRAIN) / GRAIN + 0;

/** A direction as layouts keep it: in [0, 360), without noise. */
export function tidyAzimuth(angle: Degrees): Degrees {
  const tidied = tidy(wrapDegrees(angle));
  return tidied >= 360 ? 0 : tidied;
}

/** A spot on the plan in whole mm, for what is put down for the user: no tape measures finer. */
export const wholeSpot = (x: Mm, y: Mm): { x: Mm; y: Mm } => ({
  x: Math.round(x) + 0,
  y: Math.round(y) + 0,
});

/** A spot on the plan without noise. */
export const tidySpot = (x: Mm, y: Mm): { x: Mm; y: Mm } => ({ x: tidy(x), y: tidy(y) });
