import { againstPlayerIn } from '../clearance/againstPlayer.ts';
import { motionOf, reachOf } from '../clearance/micClearance.ts';
import { dot, subtract, vec } from '../geometry/vector.ts';
import { moveMicTip, setPlateDepth } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { kickFrame } from '../rig/pieces/kickFrame.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { placeMic } from '../rig/placeMic.ts';
import type { Mm } from '../units/quantity.ts';
import type { Finding } from './report.ts';

/** A mic brought to the spot that the drummer wished for, as far as its mount allows. */
export interface WishedMove {
  readonly kind: 'wish';
  readonly mic: Id;
  /** Where the mic is asked to go, kit frame; in a stand, on the straight way from where it is to the wished spot. */
  readonly to: { readonly x: Mm; readonly y: Mm };
  /** How far from the wished spot it then is, on the plan. */
  readonly short: Mm;
  /** Its clearance there, by the exact search; infinite when nothing moves; below 0 by how deep it would be in the player or a pedal's way. */
  readonly clearance: Mm;
}

/** Halvings of the way to the wished spot: 1 mm on 4 m after 12. */
const HALVINGS = 16;
/** A change that leaves the mic this near to where it is, is none. */
const NOTHING: Mm = 0.5;

/**
 * W1 The mic keeps its height and its aim. A stand's base stays: where its boom does not reach the wished spot, the mic goes as far along
 *    the straight way there as it reaches; a boom that did not reach before goes all the way.
 * W2 A clip goes round its rim and in or out as far as clips go; a plate on the deck goes there; a plate in a kick goes along it.
 * Null when there is no wish for a spot, or the mount does not let the mic come nearer.
 */
export function wishedMove(finding: Finding, layout: Layout): WishedMove | null {
  const [id] = finding.about;
  const { place } = finding;
  if (id === undefined || !place || finding.numbers['distance'] === undefined) return null;
  const before = placedIn(layout, id);
  if (!before) return null;
  const at = (share: number) => ({
    x: before.tip.x + share * (place.x - before.tip.x),
    y: before.tip.y + share * (place.y - before.tip.y),
  });
  const reaches = (share: number): boolean =>
    (placedIn(takeWish(layout, id, at(share)), id)?.stand?.beyondReach ?? 0) === 0;
  const to = at(!reaches(0) || reaches(1) ? 1 : farthest(reaches));
  const after = placedIn(takeWish(layout, id, to), id);
  if (!after) return null;
  const fromPlace = ({ tip }: PlacedMic) => Math.hypot(tip.x - place.x, tip.y - place.y);
  if (fromPlace(after) > fromPlace(before) - NOTHING) return null;
  const motion = motionOf(layout.player, layout.pieces);
  const deep = againstPlayerIn(layout)(after)
    .filter(({ code }) => code !== 'mic-near-player')
    .map(({ overlap }) => -overlap);
  const clearance = Math.min(reachOf(motion, after).clearance, ...deep);
  return { kind: 'wish', mic: id, to, short: fromPlace(after), clearance };
}

/** The layout with the mic moved. */
export function takeWish(layout: Layout, id: Id, to: WishedMove['to']): Layout {
  const mount = layout.mics.find((mic) => mic.id === id)?.mount;
  if (mount?.kind !== 'plateInKick') return moveMicTip(layout, id, to);
  const kick = layout.pieces.find((piece) => piece.id === mount.kick);
  if (kick?.kind !== 'kick') return layout;
  const { front, frontHead } = kickFrame(kick);
  const behind = dot(subtract(frontHead, vec(to.x, to.y, frontHead.z)), front);
  return setPlateDepth(layout, id, Math.max(0, Math.min(kick.depth, Math.round(behind))));
}

/** The largest share of the way that is known to be within reach. */
function farthest(reaches: (share: number) => boolean): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (reaches(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function placedIn(layout: Layout, id: Id): PlacedMic | undefined {
  const mic = layout.mics.find((one) => one.id === id);
  return mic && placeMic(mic, layout);
}
