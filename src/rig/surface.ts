import { type Vec3, vec } from '../geometry/vector.ts';
import type { Struck } from '../layout/pieces/piece.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';

/** A playing surface: a disc of `radius` about `centre`, `normal` the unit vector away from the drum or over the cymbal. */
export interface Surface {
  readonly centre: Vec3;
  readonly normal: Vec3;
  readonly radius: Mm;
}

/** The playing surface of a struck piece, kit frame. Mirrored pieces give exactly mirrored surfaces. */
export function surfaceOf(piece: Struck): Surface {
  const flat = sinDeg(piece.tilt);
  return {
    centre: vec(piece.x, piece.y, piece.z),
    normal: vec(
      flat * cosDeg(piece.tiltToward),
      flat * sinDeg(piece.tiltToward),
      cosDeg(piece.tilt),
    ),
    radius: piece.diameter / 2,
  };
}
