import { cosDeg } from '../units/angle.ts';
import type { Decibels, Degrees, Mm } from '../units/quantity.ts';
import { toDecibels } from './decibels.ts';
import { LEAST_ENERGY, type Pattern } from './pattern.ts';
import type { Hertz, MetresPerSecond } from './quantities.ts';

/** Where a small source is and what it plays. */
export interface Near {
  readonly frequency: Hertz;
  readonly distance: Mm;
  /** Off the mic's axis. */
  readonly angle: Degrees;
  readonly speed: MetresPerSecond;
}

/**
 * H7 Near a small source the pressure-gradient part of a pattern grows by 1 + 1 / (j k r), k = 2 pi f / c (spherical wave;
 *    Beranek & Mellow, Acoustics, 2nd ed., eq. 2.134). This is the level against a far source on the axis.
 */
export function nearLevel({ a, b }: Pattern, near: Near): Decibels {
  const gradient = b * cosDeg(near.angle);
  return toDecibels((a + gradient) ** 2 + (gradient / kr(near)) ** 2);
}

/** H8 Proximity boost: the level against a far source at the same angle, whose null is no deeper than H5 allows. Never below 0. */
export function proximityBoost({ a, b }: Pattern, near: Near): Decibels {
  const gradient = b * cosDeg(near.angle);
  const far = Math.max(LEAST_ENERGY, (a + gradient) ** 2);
  return toDecibels(1 + (gradient / kr(near)) ** 2 / far);
}

const kr = ({ frequency, distance, speed }: Near): number =>
  (2 * Math.PI * frequency * distance) / (1000 * speed);
