import type { Degrees, Radians } from './quantity.ts';

/** Degrees to radians. */
export const toRadians = (angle: Degrees): Radians => (angle * Math.PI) / 180;

/** Radians to degrees. */
export const toDegrees = (angle: Radians): Degrees => (angle * 180) / Math.PI;

/** The same direction in [0, 360). */
export function wrapDegrees(angle: Degrees): Degrees {
  const wrapped = angle % 360;
  return wrapped < 0 ? wrapped + 360 : wrapped + 0;
}

/** The signed turn from one direction to another the short way round, in (-180, 180]. */
export function turnBetween(from: Degrees, to: Degrees): Degrees {
  const turn = wrapDegrees(to - from);
  return turn > 180 ? turn - 360 : turn;
}

/**
 * Sine of an angle in degrees, reduced to the first eighth of the circle before it is evaluated, so that mirrored angles
 * give exactly mirrored values: sinDeg(180 - a) === sinDeg(a) and sinDeg(-a) === -sinDeg(a), bit for bit. A mirrored kit
 * then gives mirrored results without a rounding difference.
 */
export function sinDeg(angle: Degrees): number {
  if (angle < 0) return -sinDeg(-angle);
  const a = angle % 360;
  if (a > 180) return -firstHalfSine(a - 180);
  return firstHalfSine(a);
}

/** Cosine of an angle in degrees, with the exact symmetries of {@link sinDeg}: cosDeg(180 - a) === -cosDeg(a). */
export function cosDeg(angle: Degrees): number {
  const a = Math.abs(angle) % 360;
  const folded = a > 180 ? 360 - a : a;
  return folded > 90 ? -firstQuarterCosine(180 - folded) : firstQuarterCosine(folded);
}

function firstHalfSine(a: Degrees): number {
  const folded = a > 90 ? 180 - a : a;
  return folded > 45 ? Math.cos(toRadians(90 - folded)) : Math.sin(toRadians(folded));
}

function firstQuarterCosine(a: Degrees): number {
  return a > 45 ? Math.sin(toRadians(90 - a)) : Math.cos(toRadians(a));
}
