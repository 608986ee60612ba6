import { type Motion, motionOf } from '../clearance/micClearance.ts';
import { struckZone, type Zone } from '../clearance/zone.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { placeMic } from '../rig/placeMic.ts';
import type { Mm } from '../units/quantity.ts';

/** Where one mic, at its height, would be struck (rule Z1). Rings in the kit frame. */
export interface ForbiddenZone extends Zone {
  readonly mic: Id;
  /** Height of the mic's tip, mm. */
  readonly height: Mm;
}

/** Parts that keep their place on the deck when a mic is moved: the zone is about the mic, not about its stand. */
const STAYS = new Set(['boom', 'mast', 'base']);

/** The forbidden zone of a mic; null when there is no such mic. */
export function forbiddenZone(
  layout: Layout,
  micId: Id,
  motion: Motion = motionOf(layout.player, layout.pieces),
): ForbiddenZone | null {
  const mic = layout.mics.find(({ id }) => id === micId);
  if (!mic) return null;
  const placed = placeMic(mic, layout);
  const solids = placed.solids.filter(({ part }) => !STAYS.has(part));
  const zone = struckZone(motion, solids, placed.tip);
  return { mic: micId, height: placed.tip.z, ...zone };
}
