import { verdictOf } from '../clearance/clearances.ts';
import { type Motion, motionOf, reachOf } from '../clearance/micClearance.ts';
import type { Verdict } from '../clearance/nearest.ts';
import { type RimArc, rimRing } from '../clearance/rimRing.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { ClipMic } from '../layout/catalogue/offered/usualClip.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { ClipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import { placeMic } from '../rig/placeMic.ts';
import type { Degrees, Mm } from '../units/quantity.ts';

/** What a clip mic would be all round its drum's rim, with its reach, height and pitch kept (rule R1). */
export interface RingOfMic {
  readonly mic: Id;
  readonly drum: Id;
  /** The reach that it holds for, mm. */
  readonly reach: Mm;
  /** Whole turn from 0 degrees, anticlockwise from above; azimuths as a clip's `angle`. */
  readonly arcs: readonly RimArc[];
  /** The mic, at the place that is proposed for it, when it is not placed yet: it is in no layout (rule R2). */
  readonly planned?: PlannedClip;
}

export interface PlannedClip {
  readonly mic: ClipMic;
  readonly place: RingPlace;
  /** Whether its cable has a way from there that keeps clear of everything. */
  readonly hasWay: boolean;
}

/** What a clip mic would be at one place of its drum's rim: its exact clearance there (rule C1). */
export interface RingPlace {
  readonly mic: Id;
  readonly angle: Degrees;
  readonly verdict: Verdict;
  /** Infinite when nothing moves. */
  readonly clearance: Mm;
  /** The front of the mic there, kit frame. */
  readonly tip: Vec3;
}

/** A clip mic with its drum; undefined for a mic that is not there or not on a clip. */
export function clipIn(
  { mics, pieces }: Pick<Layout, 'mics' | 'pieces'>,
  micId: Id,
): { readonly mic: Mic; readonly mount: ClipMount; readonly drum: Drum } | undefined {
  const mic = mics.find(({ id }) => id === micId);
  if (mic?.mount.kind !== 'clip') return undefined;
  const { mount } = mic;
  const drum = pieces.find(({ id }) => id === mount.drum);
  return drum && isDrum(drum) ? { mic, mount, drum } : undefined;
}

/** The rim ring of a clip mic; null for a mic that is not there or not on a clip. */
export function ringOf(
  layout: Layout,
  micId: Id,
  motion: Motion = motionOf(layout.player, layout.pieces),
): RingOfMic | null {
  const clip = clipIn(layout, micId);
  if (!clip) return null;
  const arcs = rimRing(motion, { ...clip, surroundings: layout, margin: layout.margin });
  return { mic: micId, drum: clip.drum.id, reach: clip.mount.reach, arcs };
}

/** A clip mic at another place of its rim, its reach, height and pitch kept; null as for `ringOf`. */
export function placeOnRing(
  layout: Layout,
  micId: Id,
  angle: Degrees,
  motion: Motion = motionOf(layout.player, layout.pieces),
): RingPlace | null {
  const clip = clipIn(layout, micId);
  if (!clip) return null;
  const placed = placeMic({ ...clip.mic, mount: { ...clip.mount, angle } }, layout);
  const { clearance } = reachOf(motion, placed);
  const verdict = verdictOf(clearance, layout.margin);
  return { mic: micId, angle, verdict, clearance, tip: placed.tip };
}
