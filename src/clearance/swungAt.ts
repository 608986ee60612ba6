import {
  along,
  dot,
  perpendicular,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../geometry/vector.ts';
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
  const normal = unit(along(level, asideTo(swing, toward), -sinDeg(lean)), swing.normal);
  return { ...swing, normal, sin: 0, cos: 1 };
}

/** The moment, 0 to 1, at which a cymbal that swings toward a point comes nearest to it. */
export function swingMoment(swing: Swing, point: Vec3): number {
  const from = subtract(point, swing.centre);
  const lift = toDegrees(Math.atan2(dot(from, swing.normal), dot(from, asideTo(swing, point))));
  const share = Math.min(1, Math.abs(lift) / SWING);
  const first = toDegrees(Math.asin(share)) / FULL_SWING;
  return lift > 0 ? first + 0.5 : first;
}

/** The direction in the cymbal's plane from its centre toward a point; to one straight over the centre all are as good. */
function asideTo({ centre, normal }: Swing, point: Vec3): Vec3 {
  const backward = unit(perpendicular(vec(0, -1, 0), normal), vec(0, 0, 1));
  return unit(perpendicular(subtract(point, centre), normal), backward);
}
