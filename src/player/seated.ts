import type { Capsule } from '../geometry/capsule.ts';
import { vec } from '../geometry/vector.ts';
import type { Player } from '../layout/player.ts';
import type { Mm } from '../units/quantity.ts';
import { type Body, bodyOf } from './body.ts';

/** Head, neck, shoulders and trunk of the player at rest, kit frame, mm. */
export interface Seated {
  readonly head: readonly Capsule[];
  readonly neck: Capsule;
  readonly shoulders: Capsule;
  readonly trunk: readonly Capsule[];
}
export type SeatedPart = keyof Seated;

/**
 * What the survey's lines on stature do not give, mm at a stature of 1750 and in proportion to it otherwise. The head's top over the eye is the
 * difference of the survey's means of sitting height and eye height sitting; the rest is from memory of usual figure drawings.
 */
const AT_1750 = {
  stature: 1750,
  topOverEye: 113,
  headForward: 10,
  headBreadth: 155,
  headLength: 195,
  headHeight: 230,
  neckRadius: 60,
  shoulderRadius: 62,
  trunkRadius: 120,
} as const;

/** From memory: how broad the chest is beside the distance between the shoulder joints. */
const CHEST_BREADTH = 0.75;

/** Two lengths of the same survey (NATICK/TR-15/007) that only the body at rest needs, mm = intercept + slope x stature. */
const eyeHeightSitting = (stature: Mm): Mm => 102.218 + 0.398795 * stature;
const hipBreadthSitting = (stature: Mm): Mm => 341.25 + 0.025947 * stature;

/**
 * The player who sits upright and looks straight ahead, over the throne's centre:
 * B2 Shoulders: from one shoulder joint to the other (those that the arms hang from), radius 62. Neck: from between them up into the head, radius 60.
 * B3 Trunk: three upright capsules side by side from the seat to the shoulders, radius 120, together as broad as the hips below and as the chest above.
 * B4 Head: as high as the eye's height sitting says, 155 broad, 195 long, 230 high, its middle 10 before the shoulders. Where shoulders were
 *    measured, it keeps its height over them.
 */
export function seatedOf(player: Pick<Player, 'stature' | 'seatHeight' | 'body'>): Seated {
  const { stature, seatHeight } = player;
  const body = bodyOf(player);
  const size = stature / AT_1750.stature;
  const joints = seatHeight + body.acromialHeightSitting;
  const headRadius = (AT_1750.headBreadth / 2) * size;
  const middle = joints + headOverJoints(stature, size) - (AT_1750.headHeight / 2) * size;
  const aboveMiddle = (AT_1750.headHeight / 2) * size - headRadius;
  const beforeMiddle = (AT_1750.headLength / 2) * size - headRadius;
  const head = [-beforeMiddle, beforeMiddle].map((forward): Capsule => {
    const y = AT_1750.headForward * size + forward;
    return {
      a: vec(0, y, middle - aboveMiddle),
      b: vec(0, y, middle + aboveMiddle),
      radius: headRadius,
    };
  });
  const half = body.biacromialBreadth / 2;
  return {
    head,
    neck: {
      a: vec(0, 0, joints),
      b: vec(0, AT_1750.headForward * size, middle - aboveMiddle),
      radius: AT_1750.neckRadius * size,
    },
    shoulders: {
      a: vec(-half, 0, joints),
      b: vec(half, 0, joints),
      radius: AT_1750.shoulderRadius * size,
    },
    trunk: trunkOf(player, body, size),
  };
}

function trunkOf(
  { stature, seatHeight }: Pick<Player, 'stature' | 'seatHeight'>,
  { acromialHeightSitting, biacromialBreadth }: Body,
  size: number,
): readonly Capsule[] {
  const radius = AT_1750.trunkRadius * size;
  const low = Math.max(0, hipBreadthSitting(stature) / 2 - radius);
  const high = Math.max(0, (CHEST_BREADTH * biacromialBreadth) / 2 - radius);
  const top = seatHeight + acromialHeightSitting - AT_1750.shoulderRadius * size;
  return [-1, 0, 1].map((aside) => ({
    a: vec(aside * low, 0, seatHeight + radius),
    b: vec(aside * high, 0, top),
    radius,
  }));
}

/** How far the head's top is over the shoulder joints of somebody of this stature whose shoulders are as the survey says. */
function headOverJoints(stature: Mm, size: number): Mm {
  const { acromialHeightSitting } = bodyOf({ stature, body: {} });
  return eyeHeightSitting(stature) + AT_1750.topOverEye * size - acromialHeightSitting;
}
