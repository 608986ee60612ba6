import type { Degrees, Radians } from './quantity.ts';

/** Degrees to radians. */
export const toRadians = (angle: Degrees): Radians => (angle * Math.PI) / 180;

/** Radians to degrees. */
export const toDegrees = (angle: Radians): Degrees => (angle * 180) / Math.PI;

/** The same direction in [0, 360). */
export function wrapDegrees(angle: Degrees): Degrees {
  const wrapped = angle % 360;
  // A turn too small to be told from a full circle when it is added to one is no turn; the last sum turns -0 into 0.
  return (wrapped < 0 ? (wrapped + 360) % 360 : wrapped) + 0;
}

/** The signed turn from one direction to another the short way round, in (-180, 180]. */
export function turnBetween(from: Degrees, to: Degrees): Degrees {
  const turn = wrapDegrees(to - from);
  return turn > 180 ? turn - 360 : turn;
}

/** Angles are evaluated in whole billionths of a degree, which a sum or difference keeps exact. */
const BILLION = 1e9;
const EIGHTH = 45 * BILLION;

/** The angle without its sign, in [0, 360) degrees, as a whole number of billionths. */
const billionths = (angle: Degrees): number => Math.round(Math.abs(angle) * BILLION) % (8 * EIGHTH);

/**
 * Sine of an angle in degrees, to the nearest billionth of a degree (less than 1e-7 mm at 3 m), reduced to the first eighth of the
 * circle before it is evaluated. So mirrored angles of at most nine decimals give exactly mirrored values: sinDeg(180 - a) === sinDeg(a)
 * and sinDeg(-a) === -sinDeg(a), bit for bit, and a mirrored kit gives mirrored results without a rounding difference.
 */
export function sinDeg(angle: Degrees): number {
  if (angle < 0) return -sinDeg(-angle);
  const a = billionths(angle);
  return a > 4 * EIGHTH ? -halfCircleSine(a - 4 * EIGHTH) : halfCircleSine(a);
}

/** Cosine of an angle in degrees, with the exact symmetries of {@link sinDeg}: cosDeg(180 - a) === -cosDeg(a). */
export function cosDeg(angle: Degrees): number {
  const a = billionths(angle);
  const folded = a > 4 * EIGHTH ? 8 * EIGHTH - a : a;
  return folded > 2 * EIGHTH ? -quarterCosine(4 * EIGHTH - folded) : quarterCosine(folded);
}

function halfCircleSine(a: number): number {
  const folded = a > 2 * EIGHTH ? 4 * EIGHTH - a : a;
  return folded > EIGHTH
    ? Math.cos(toRadians((2 * EIGHTH - folded) / BILLION))
    : Math.sin(toRadians(folded / BILLION));
}

function quarterCosine(a: number): number {
  return a > EIGHTH
    ? Math.sin(toRadians((2 * EIGHTH - a) / BILLION))
    : Math.cos(toRadians(a / BILLION));
}
