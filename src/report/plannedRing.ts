import { createCableRouter } from '../cabling/routeRuns.ts';
import { againstPlayerIn } from '../clearance/againstPlayer.ts';
import { type Motion, motionOf, reachOf } from '../clearance/micClearance.ts';
import type { Verdict } from '../clearance/nearest.ts';
import type { RimArc } from '../clearance/rimRing.ts';
import { type ClipMic, usualClip } from '../layout/catalogue/offered/usualClip.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { buildRig, createRigBuilder } from '../rig/buildRig.ts';
import { placeMic } from '../rig/placeMic.ts';
import { createStandingOf } from '../rig/standing/findStanding.ts';
import { turnBetween, wrapDegrees } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { placeOnRing, type RingOfMic, ringOf } from './ring.ts';

/**
 * R2 The ring of a drum without a clip is that of its usual clip mic, which is not placed yet. It is proposed at the clear place nearest to
 *    its usual one where it stands in nothing's way, the player's included, and its cable has a free way to the box; where no cable has one, at the nearest that is clear
 *    and free, which is told; where none is clear, at the nearest tight one, else where it usually is.
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
  const hasWay = createHasWay(layout, usual);
  const angle = proposedAngle(layout, usual, { arcs: ring.arcs, hasWay, motion });
  const mic = turnedTo(usual, angle);
  const place = placeOnRing(withMic(layout, mic), mic.id, angle, motion);
  return place && { ...ring, planned: { mic, place, hasWay: hasWay(angle) } };
}

/** A layout with the mic that a ring is for, which need not be placed yet. */
export const withPlanned = (layout: Layout, { planned }: Pick<RingOfMic, 'planned'>): Layout =>
  planned ? withMic(layout, planned.mic) : layout;

const withMic = (layout: Layout, mic: ClipMic): Layout => ({
  ...layout,
  mics: [...layout.mics, mic],
});

const turnedTo = (mic: ClipMic, angle: Degrees): ClipMic => ({
  ...mic,
  mount: { ...mic.mount, angle },
});

/** Whether the cable of the mic at an angle has a way that keeps clear of everything. Most places of a rim share where their cables come down. */
function createHasWay(layout: Layout, usual: ClipMic): (angle: Degrees) => boolean {
  const rigOf = createRigBuilder();
  const route = createCableRouter();
  const known = new Map<string, boolean>();
  return (angle) => {
    const placed = withMic(layout, turnedTo(usual, angle));
    const rig = rigOf(placed);
    const down = JSON.stringify(rig.mics.at(-1)?.deckPoint);
    const hasWay = known.get(down) ?? route(placed, rig).runs.at(-1)?.through.length === 0;
    known.set(down, hasWay);
    return hasWay;
  };
}

function proposedAngle(
  layout: Layout,
  usual: ClipMic,
  rim: {
    readonly arcs: readonly RimArc[];
    readonly hasWay: (angle: Degrees) => boolean;
    readonly motion: Motion;
  },
): Degrees {
  const { angle: from } = usual.mount;
  const nearest = Array.from({ length: 360 }, (_, angle) => angle).toSorted(
    (a, b) => Math.abs(turnBetween(from, a)) - Math.abs(turnBetween(from, b)),
  );
  const standingOf = createStandingOf(buildRig(layout), layout.deck);
  const againstPlayer = againstPlayerIn(layout);
  // A ring's arcs may end a tolerance off: the place itself has the room.
  const isFree = (angle: Degrees, room: Mm): boolean => {
    const placed = placeMic(turnedTo(usual, angle), layout);
    return (
      standingOf(placed).length === 0 &&
      againstPlayer(placed).length === 0 &&
      reachOf(rim.motion, placed).clearance >= room
    );
  };
  for (const [verdict, room] of [['clear', layout.margin] as const, ['tight', 0] as const]) {
    const places = nearest.filter((angle) => isAll(rim.arcs, angle, verdict));
    const found = firstFree(places, (angle) => isFree(angle, room), rim.hasWay) ?? places[0];
    if (found !== undefined) return found;
  }
  return from;
}

/** The first place that is free and has a way; where none has one, the first that is free. No more are looked at than are needed to know. */
function firstFree(
  places: readonly Degrees[],
  isFree: (angle: Degrees) => boolean,
  hasWay: (angle: Degrees) => boolean,
): Degrees | undefined {
  let free: Degrees | undefined;
  for (const angle of places) {
    if (!isFree(angle)) continue;
    if (hasWay(angle)) return angle;
    free ??= angle;
  }
  return free;
}

/** Whether a place has a verdict with room for what the ends of arcs are exact to, half a degree either way. */
const isAll = (arcs: readonly RimArc[], angle: Degrees, verdict: Verdict): boolean =>
  [angle - 0.5, angle, angle + 0.5].every((at) => {
    const turned = wrapDegrees(at);
    return arcs.find(({ from, to }) => from <= turned && turned < to)?.verdict === verdict;
  });
