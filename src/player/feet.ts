import type { Capsule } from '../geometry/capsule.ts';
import { along, type Vec3, vec } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Pedal } from '../layout/pieces/pedal.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { placePedal } from '../rig/pieces/pedalPiece.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';
import { type Leg, legsOf } from './legs.ts';

/** A foot at rest on a pedal (or on the deck, pedal null): capsules in the kit frame. */
export interface Foot {
  readonly pedal: Id | null;
  readonly solids: readonly Capsule[];
}

/** Length of a foot beside the stature: the survey's means (NATICK/TR-15/007), 271 of 1756 and 246 of 1629 mm. */
const LENGTH = 0.153;
/** The shoe, common practice, no source: what it adds to the toe, how broad and thick foot and shoe are. */
const SHOE: Mm = 20;
const SOLE_RADIUS: Mm = 30;
const SOLE_ASIDE: Mm = 20;
const INSTEP_RADIUS: Mm = 45;
/** Where the instep comes down to the sole's height, a share of the way from ankle to toe, and how high its middle is over what the foot stands on. */
const INSTEP_SHARE = 0.6;
const INSTEP_HEIGHT: Mm = 55;

/**
 * L5 A foot at rest lies along its pedal's board from the heel to the toe, one without a pedal straight ahead on the deck. Two capsules of radius 30 side by
 *    side make 100 mm of sole, one of radius 45 the instep, from the ankle (L1) down to 55 mm over the board. The heel reaches 45 mm behind
 *    the ankle. It does not move: what the leg lifts it by is not modelled.
 */
export function feetOf(player: Player, pieces: readonly Piece[]): readonly Foot[] {
  return legsOf(player, pieces).map((leg) => ({
    pedal: leg.pedal,
    solids: footOf(leg, pedalOf(leg, pieces), LENGTH * player.stature),
  }));
}

const pedalOf = ({ pedal }: Leg, pieces: readonly Piece[]): Pedal | undefined =>
  pieces.find((piece): piece is Pedal => piece.kind === 'pedal' && piece.id === pedal);

function footOf({ shin }: Leg, pedal: Pedal | undefined, length: Mm): readonly Capsule[] {
  const ankle = shin.b;
  const turn = pedal?.turn ?? 90;
  const ahead = vec(cosDeg(turn), sinDeg(turn), 0);
  const aside = vec(-ahead.y, ahead.x, 0);
  const ground = groundUnder(pedal);
  /** Over the ground at some way from the heel. */
  const at = (forward: Mm, over: Mm): Vec3 => ({
    ...along(ankle, ahead, forward),
    z: ground(forward) + over,
  });
  const toe = length - INSTEP_RADIUS + SHOE - SOLE_RADIUS;
  const sole = [-SOLE_ASIDE, SOLE_ASIDE].map((to) => ({
    a: along(at(0, SOLE_RADIUS), aside, to),
    b: along(at(toe, SOLE_RADIUS), aside, to),
    radius: SOLE_RADIUS,
  }));
  return [{ a: ankle, b: at(INSTEP_SHARE * toe, INSTEP_HEIGHT), radius: INSTEP_RADIUS }, ...sole];
}

/** How high what a foot stands on is at some way from its heel: the top of the board (P13 of the rig), or the deck. */
function groundUnder(pedal: Pedal | undefined): (forward: Mm) => Mm {
  const board = pedal && placePedal(pedal).hardware[0];
  if (!board) return () => 0;
  const { a, b, radius } = board;
  const way = Math.hypot(b.x - a.x, b.y - a.y);
  return (forward) => a.z + radius + ((b.z - a.z) * (forward - radius)) / Math.max(1, way);
}
