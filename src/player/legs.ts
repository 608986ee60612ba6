import type { Capsule } from '../geometry/capsule.ts';
import {
  along,
  distance,
  perpendicular,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import type { Mm } from '../units/quantity.ts';
import { bodyOf } from './body.ts';
import { mirrored, type Side, signOf } from './hands.ts';

/** Rule L1: radius of thigh and shin, and where a hip and a resting ankle are. */
const THIGH_RADIUS = 75;
const SHIN_RADIUS = 55;
const HIP = { side: 90, forward: 60, overSeat: 90 };
const ANKLE_HEIGHT = 90;
/** Without a pedal the foot rests this far to the side (rule L4). */
const RESTING_SIDE = 150;

/** A leg at rest with its foot on a pedal (or on the deck, pedal null); capsules in the kit frame. */
export interface Leg {
  readonly side: Side;
  readonly pedal: Id | null;
  readonly thigh: Capsule;
  readonly shin: Capsule;
}

/**
 * Legs at rest (rules L1 to L4): from the hip over the knee to the ankle at the pedal's heel. A foot that has several pedals is
 * given a leg on each of them. The leg of the leading side comes first, so that a mirrored kit lists its mirrored legs alike.
 */
export function legsOf(player: Player, pieces: readonly Piece[]): readonly Leg[] {
  const sides: readonly Side[] =
    player.leadHand === 'right' ? ['right', 'left'] : ['left', 'right'];
  return sides.flatMap((side): Leg[] => {
    const pedals = pieces.filter((piece) => piece.kind === 'pedal' && piece.foot === side);
    if (pedals.length === 0) return [leg(side, null, restingAnkle(player), player)];
    return pedals.flatMap((pedal) =>
      pedal.kind === 'pedal'
        ? [leg(side, pedal.id, mirrored(vec(pedal.x, pedal.y, ANKLE_HEIGHT), signOf(side)), player)]
        : [],
    );
  });
}

/** Links of the leg (rule L2): buttock-knee length less 100 mm, knee height sitting less the ankle's height. */
function links(player: Player): { readonly thigh: Mm; readonly shin: Mm } {
  const body = bodyOf(player);
  return { thigh: body.buttockKneeLength - 100, shin: body.kneeHeightSitting - ANKLE_HEIGHT };
}

/** Rule L4: without a pedal the shin stands upright under a thigh that lies forward. Hand space. */
const restingAnkle = (player: Player): Vec3 =>
  vec(RESTING_SIDE, HIP.forward + 0.95 * links(player).thigh, ANKLE_HEIGHT);

function leg(side: Side, pedal: Id | null, ankle: Vec3, player: Player): Leg {
  const { thigh, shin } = links(player);
  const hip = vec(HIP.side, HIP.forward, player.seatHeight + HIP.overSeat);
  const line = distance(hip, ankle);
  const forward = unit(subtract(ankle, hip), vec(0, 1, 0));
  // Rule L3: the knee stands up out of the line from hip to ankle; a leg too short for the way, or too long to fold into it, is straight.
  const foot = (line * line + thigh * thigh - shin * shin) / (2 * Math.max(1, line));
  const base = Math.max(-thigh, Math.min(thigh, foot));
  const up = unit(perpendicular(vec(0, 0, 1), forward), vec(0, 1, 0));
  const height = Math.sqrt(Math.max(0, thigh * thigh - base * base));
  const knee = mirrored(along(along(hip, forward, base), up, height), signOf(side));
  return {
    side,
    pedal,
    thigh: { a: mirrored(hip, signOf(side)), b: knee, radius: THIGH_RADIUS },
    shin: { a: knee, b: mirrored(ankle, signOf(side)), radius: SHIN_RADIUS },
  };
}
