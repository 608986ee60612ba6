import type { Capsule } from '../../geometry/capsule.ts';
import { distance, type Vec3, vec } from '../../geometry/vector.ts';
import type { Support } from '../../layout/pieces/support.ts';
import type { Mm } from '../../units/quantity.ts';
import { baseCapsules, legsFootprint } from '../feet.ts';
import type { Footprint } from '../placed.ts';

/** Sizes of stands for drums and cymbals. Common practice, no source. */
const MAST_RADIUS: Mm = 13;
const ARM_RADIUS: Mm = 11;
const HUB_RADIUS: Mm = 25;
const LEG_HEIGHT: Mm = 180;
/** How much an arm rises for each mm it reaches out. */
const ARM_SLOPE = 0.5;

/** What carries a piece: its solids and its feet. */
export interface Carrier {
  readonly hardware: readonly Capsule[];
  readonly footprints: readonly Footprint[];
}

/**
 * P1 A piece's own stand has its hub at the piece's centre moved by `dx`, `dy`; a mast stands on it. A piece over its hub
 *    sits on the mast; else an arm leads from the mast to the piece, rising by half of what it reaches out, from no lower
 *    than the legs.
 * P2 `held` is the point of the piece that the stand holds.
 */
export function pieceStand(
  support: Extract<Support, { kind: 'stand' }>,
  centre: Vec3,
  held: Vec3,
): Carrier {
  const hub = { x: centre.x + support.dx, y: centre.y + support.dy };
  const legHeight = Math.min(LEG_HEIGHT, held.z);
  const footprint = legsFootprint({ ...support, hub, hubRadius: HUB_RADIUS, legHeight });
  const over = vec(hub.x, hub.y, held.z);
  const reach = distance(over, held);
  const top = vec(hub.x, hub.y, Math.max(legHeight, held.z - ARM_SLOPE * reach));
  const mast = { a: vec(hub.x, hub.y, MAST_RADIUS), b: top, radius: MAST_RADIUS };
  const arm = reach > 0 ? [{ a: top, b: held, radius: ARM_RADIUS }] : [];
  return { hardware: [mast, ...arm, ...baseCapsules(footprint)], footprints: [footprint] };
}
