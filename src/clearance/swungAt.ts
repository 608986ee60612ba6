import { outwardTo } from '../geometry/rockingDisc.ts';
import { along, dot, scale, subtract, unit, type Vec3 } from '../geometry/vector.ts';
import { cosDeg, sinDeg, toDegrees } from '../units/angle.ts';
import { SWING, type Swing } from './swing.ts';

/** From rest over both ends of the swing back to rest. */
const FULL_SWING = 360;

/**
 * A cymbal that swings toward a point and back (W1), at one moment: `at` runs from 0, at rest, over the edge that is nearest to that point at its
 * lowest and at its highest back to rest at 1. As a disc that does not rock.
 */
export function swungAt(swing: Swing, toward: Vec3, at: number): Swing {
  const lean = -SWING * sinDeg(FULL_SWING * at);
  const level = scale(swing.normal, cosDeg(lean));
  const normal = unit(along(level, outwardTo(swing, toward), -sinDeg(lean)), swing.normal);
  return { ...swing, normal, sin: 0, cos: 1 };
}

/** The moment, 0 to 1, at which a cymbal that swings toward a point comes nearest to it. */
export function swingMoment(swing: Swing, point: Vec3): number {
  const from = subtract(point, swing.centre);
  const lift = toDegrees(Math.atan2(dot(from, swing.normal), dot(from, outwardTo(swing, point))));
  const share = Math.min(1, Math.abs(lift) / SWING);
  const first = toDegrees(Math.asin(share)) / FULL_SWING;
  return lift > 0 ? first + 0.5 : first;
}
