import { cosDeg, sinDeg, toDegrees } from '../../units/angle.ts';
import type { Degrees, Mm } from '../../units/quantity.ts';
import type { Drum } from '../pieces/drum.ts';

/** Where a clip would have to sit for its mic's tip to be at a point. Angle in degrees, lengths in mm. */
export interface ClipPlace {
  readonly angle: Degrees;
  readonly reach: Mm;
  readonly height: Mm;
}

interface Point {
  readonly x: Mm;
  readonly y: Mm;
  /** Left out where only the plan says where the tip is: then it stands `height` above the head. */
  readonly z?: Mm | undefined;
}

/** Steeper heads have no place on the plan that tells one height from another. */
const LEAST_UPRIGHT = 1e-3;

/**
 * The clip place on a drum whose tip is at a point (kit frame): the inverse of the place that a clip's angle, reach and
 * height give. The angle is that of the tip on the plan, seen from the drum's axis at the tip's height.
 */
export function clipPlaceAt(drum: Drum, point: Point, height: Mm): ClipPlace {
  const flat = sinDeg(drum.tilt);
  const n = { x: flat * cosDeg(drum.tiltToward), y: flat * sinDeg(drum.tiltToward) };
  const up = Math.max(LEAST_UPRIGHT, cosDeg(drum.tilt));
  const [dx, dy] = [point.x - drum.x, point.y - drum.y];
  const above = point.z === undefined ? height : dx * n.x + dy * n.y + (point.z - drum.z) * up;
  const [wx, wy] = [dx - above * n.x, dy - above * n.y];
  const out = Math.hypot(wx, wy, (n.x * wx + n.y * wy) / up);
  return {
    angle: toDegrees(Math.atan2(wy, wx)),
    reach: drum.diameter / 2 - out,
    height: above,
  };
}
