import { unit, type Vec3, vec } from '../geometry/vector.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Degrees } from '../units/quantity.ts';
import type { Surface } from './surface.ts';

/**
 * M5 The direction in the head's plane whose plan projection has the azimuth `angle`: seen from above, a place on the rim
 *    lies where its angle says, however the drum is tilted. On a head that stands upright (tilt 90), where no direction
 *    but up and down projects, it is the steepest line of the head on the side of `angle`, or level along the head.
 */
export function rimDirection({ normal }: Surface, angle: Degrees): Vec3 {
  const x = cosDeg(angle);
  const y = sinDeg(angle);
  const inPlane = vec(normal.z * x, normal.z * y, -(normal.x * x + normal.y * y));
  return unit(inPlane, vec(x, y, 0));
}
