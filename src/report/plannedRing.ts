import { type Motion, motionOf } from '../clearance/micClearance.ts';
import type { Verdict } from '../clearance/nearest.ts';
import type { RimArc } from '../clearance/rimRing.ts';
import { type ClipMic, usualClip } from '../layout/catalogue/offered/usualClip.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { buildRig } from '../rig/buildRig.ts';
import { placeMic } from '../rig/placeMic.ts';
import { createStandingOf } from '../rig/standing/findStanding.ts';
import { turnBetween, wrapDegrees } from '../units/angle.ts';
import type { Degrees } from '../units/quantity.ts';
import { placeOnRing, type RingOfMic, ringOf } from './ring.ts';

/**
 * R2 The ring of a drum without a clip is that of its usual clip mic, which is not placed yet. It is proposed at the clear place nearest to
 *    its usual one where it stands in nothing's way; where none is clear, at the nearest tight one, else where it usually is.
 *
 * Null for what is no drum and where no mic can be added.
 */
export function plannedRing(
  layout: Layout,
  drum: Id,
  motion: Motion = motionOf(layout.player, layout.pieces),
): RingOfMic | null {
  const usual = usualClip(layout, drum);
  if (!usual) return null;
  const ring = ringOf(withMic(layout, usual), usual.id, motion);
  if (!ring) return null;
  const angle = proposedAngle(layout, usual, ring.arcs);
  const mic = { ...usual, mount: { ...usual.mount, angle } };
  const place = placeOnRing(withMic(layout, mic), mic.id, angle, motion);
  return place && { ...ring, planned: { mic, place } };
}

/** A layout with the mic that a ring is for, which need not be placed yet. */
export const withPlanned = (layout: Layout, { planned }: Pick<RingOfMic, 'planned'>): Layout =>
  planned ? withMic(layout, planned.mic) : layout;

const withMic = (layout: Layout, mic: ClipMic): Layout => ({
  ...layout,
  mics: [...layout.mics, mic],
});

function proposedAngle(layout: Layout, usual: ClipMic, arcs: readonly RimArc[]): Degrees {
  const { angle: from } = usual.mount;
  const nearest = Array.from({ length: 360 }, (_, angle) => angle).toSorted(
    (a, b) => Math.abs(turnBetween(from, a)) - Math.abs(turnBetween(from, b)),
  );
  const standingOf = createStandingOf(buildRig(layout), layout.deck);
  const isFree = (angle: Degrees): boolean =>
    standingOf(placeMic({ ...usual, mount: { ...usual.mount, angle } }, layout)).length === 0;
  for (const verdict of ['clear', 'tight'] as const) {
    const places = nearest.filter((angle) => isAll(arcs, angle, verdict));
    const found = places.find(isFree) ?? places[0];
    if (found !== undefined) return found;
  }
  return from;
}

/** Whether a place has a verdict with room for what the ends of arcs are exact to, half a degree either way. */
const isAll = (arcs: readonly RimArc[], angle: Degrees, verdict: Verdict): boolean =>
  [angle - 0.5, angle, angle + 0.5].every((at) => {
    const turned = wrapDegrees(at);
    return arcs.find(({ from, to }) => from <= turned && turned < to)?.verdict === verdict;
  });
