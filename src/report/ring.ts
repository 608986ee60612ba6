import { type Motion, motionOf } from '../clearance/micClearance.ts';
import { type RimArc, rimRing } from '../clearance/rimRing.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { isDrum } from '../layout/pieces/piece.ts';

/** What a clip mic would be all round its drum's rim, with its reach, height and pitch kept (rule R1). */
export interface RingOfMic {
  readonly mic: Id;
  readonly drum: Id;
  /** Whole turn from 0 degrees, anticlockwise from above; azimuths as a clip's `angle`. */
  readonly arcs: readonly RimArc[];
}

/** The rim ring of a clip mic; null for a mic that is not there or not on a clip. */
export function ringOf(
  layout: Layout,
  micId: Id,
  motion: Motion = motionOf(layout.player, layout.pieces),
): RingOfMic | null {
  const mic = layout.mics.find(({ id }) => id === micId);
  if (mic?.mount.kind !== 'clip') return null;
  const { mount } = mic;
  const drum = layout.pieces.find(({ id }) => id === mount.drum);
  if (!drum || !isDrum(drum)) return null;
  const clip = { mic, mount, drum, surroundings: layout, margin: layout.margin };
  return { mic: micId, drum: drum.id, arcs: rimRing(motion, clip) };
}
