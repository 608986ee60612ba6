import type { Mm } from '../units/quantity.ts';
import type { Vec3 } from './vector.ts';

/** A circle in space about an axis; `normal` is a unit vector. */
export interface Circle {
  readonly centre: Vec3;
  readonly normal: Vec3;
  readonly radius: Mm;
}

/** A step along a segment that is not worth taking, mm. */
export const LEAST_STEP: Mm = 1;

/**
 * Whether the segment between the points at p[i] and p[i + 3] comes within `limit` mm of a circle; true for some, too, that come within two of the
 * least steps more. It is walked along: from a point that is farther away by some mm, as many mm of the way are clear.
 */
export function comesNearCircle(
  { centre, normal, radius }: Circle,
  p: Float64Array,
  i: number,
  limit: Mm,
): boolean {
  const x = (p[i] as number) - centre.x;
  const y = (p[i + 1] as number) - centre.y;
  const z = (p[i + 2] as number) - centre.z;
  const vx = (p[i + 3] as number) - (p[i] as number);
  const vy = (p[i + 4] as number) - (p[i + 1] as number);
  const vz = (p[i + 5] as number) - (p[i + 2] as number);
  // Along the normal, squared, and their mixed products: the distance at t is then told by few sums.
  const w0 = x * normal.x + y * normal.y + z * normal.z;
  const w1 = vx * normal.x + vy * normal.y + vz * normal.z;
  const s0 = x * x + y * y + z * z;
  const s1 = 2 * (x * vx + y * vy + z * vz);
  const s2 = vx * vx + vy * vy + vz * vz;
  const size = Math.sqrt(s2);
  const spareAt = (t: number): Mm => {
    const along = w0 + t * w1;
    const aside = Math.sqrt(Math.max(0, s0 + t * (s1 + t * s2) - along * along)) - radius;
    return Math.sqrt(along * along + aside * aside) - limit;
  };
  const middle = spareAt(0.5);
  if (middle <= LEAST_STEP) return true;
  if (middle > size / 2 + LEAST_STEP) return false;
  // What lies about the middle is told; both ends are left, walked from there.
  for (const way of [1, -1]) {
    let far = middle;
    while (far <= size / 2 + LEAST_STEP) {
      const spare = spareAt(0.5 + (way * far) / size);
      if (spare <= LEAST_STEP) return true;
      far += spare;
    }
  }
  return false;
}
