import { along, type Vec3 } from '../../geometry/vector.ts';
import type { Drum } from '../../layout/pieces/drum.ts';
import { rimDirection } from '../../rig/rimDirection.ts';
import { surfaceOf } from '../../rig/surface.ts';
import { toDegrees, wrapDegrees } from '../../units/angle.ts';
import type { Degrees, Mm } from '../../units/quantity.ts';
import { type KitView, kitToScreen, screenToKit } from '../view/kitView.ts';
import type { ScreenPoint } from '../view/view.ts';

/** How far outside the hoop the ring is drawn, px. */
export const RING_OUT = 9;
/** How near to the ring a finger means it, px. */
const REACH = 13;

/** The point `out` mm outside a drum's hoop at an azimuth. */
export function besideRim(drum: Drum, angle: Degrees, out: Mm): Vec3 {
  const surface = surfaceOf(drum);
  const radius = surface.radius + drum.rim.width + out;
  return along(surface.centre, rimDirection(surface, angle), radius);
}

/** The azimuth of the place on a drum's ring that a finger means; null when it is not on the ring. */
export function ringAngleAt(drum: Drum, kitView: KitView, at: ScreenPoint): Degrees | null {
  const spot = screenToKit(kitView, at);
  const angle = wrapDegrees(toDegrees(Math.atan2(spot.y - drum.y, spot.x - drum.x)));
  const ring = kitToScreen(kitView, besideRim(drum, angle, RING_OUT / kitView.view.scale));
  return Math.hypot(ring.x - at.x, ring.y - at.y) <= REACH ? angle : null;
}
