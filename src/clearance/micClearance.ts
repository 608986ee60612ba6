import { nearestOnRockingDisc } from '../geometry/rockingDisc.ts';
import { closestBetweenSegments, type Segment } from '../geometry/segments.ts';
import { along, perpendicular, scale, subtract, unit, type Vec3, vec } from '../geometry/vector.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { POSITION } from '../player/arm.ts';
import { mirrored, signOf } from '../player/hands.ts';
import { type Leg, legsOf } from '../player/legs.ts';
import { type Playing, playingOf } from '../player/moves.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { micShape } from './micShape.ts';
import { type Bounds, MoveSearch, type NearestMoment, UNBOUNDED } from './moveSearch.ts';
import type { Movement, Nearest } from './nearest.ts';
import { SweptMoves } from './sweptMoves.ts';
import { nearestSwing, type Swing, type SwingGap, swingsOf } from './swing.ts';

/** Everything that moves, indexed: built once per change of kit or player. */
export interface Motion {
  readonly swept: SweptMoves;
  readonly legs: readonly Leg[];
  readonly swings: readonly Swing[];
}

export const motionOf = (player: Player, pieces: readonly Piece[]): Motion =>
  motionFrom(playingOf(player, pieces), player, pieces);

/** The motion of what was playing `before` on a kit that changed: only moves that are new are swept again. */
export const motionFrom = (
  playing: Playing,
  player: Player,
  pieces: readonly Piece[],
  before?: Motion,
): Motion => ({
  swept: new SweptMoves(playing, before?.swept),
  legs: legsOf(player, pieces),
  swings: swingsOf(pieces),
});

/** A mic's least distance to all that moves, without the layout's margin. */
export interface Reach {
  readonly clearance: Mm;
  readonly nearest: Nearest | undefined;
}

/**
 * The clearance of a mic (rule C1): the least distance between its solids and everything that moves. At or below the exact minimum of
 * the model by at most twice TOLERANCE; infinite when nothing comes below the limit; what is known to be below `enough` may be lower still.
 */
export function reachOf(
  motion: Motion,
  mic: Pick<PlacedMic, 'solids'>,
  bounds: Bounds = UNBOUNDED,
): Reach {
  const { solids } = mic;
  const shapes = { right: micShape(solids, 1), left: micShape(solids, -1) };
  // What stands still or swings costs little to measure and gives the search of the moves a limit to start from.
  const { limit, tolerance } = bounds;
  let reach = nearestLeg(motion.legs, solids, { clearance: limit, nearest: undefined });
  const swing = nearestSwing(motion.swings, solids, { limit: reach.clearance, tolerance });
  if (swing) reach = { clearance: swing.clearance, nearest: atSwing(swing, solids) };
  const search = new MoveSearch(motion.swept, shapes);
  const moment = search.nearest({ ...bounds, limit: reach.clearance });
  if (moment) reach = { clearance: moment.clearance, nearest: atMoment(moment, motion, solids) };
  return reach.nearest
    ? { ...reach, clearance: reach.clearance - tolerance }
    : { clearance: Number.POSITIVE_INFINITY, nearest: undefined };
}

function movementAt({ move, at }: NearestMoment): Movement {
  return move.from === null
    ? { kind: 'stroke', hand: move.side, on: move.on, at }
    : { kind: 'travel', hand: move.side, from: move.from, to: move.on, at };
}

function atMoment(
  moment: NearestMoment,
  motion: Motion,
  solids: readonly MicSolid[],
): Nearest | undefined {
  const part = motion.swept.arm.parts[moment.part];
  const solid = solids[moment.solid];
  if (!part || !solid) return undefined;
  const position = new Float64Array(POSITION);
  moment.move.write(moment.at, position, 0);
  const point = (i: number): Vec3 =>
    mirrored(
      vec(position[i] ?? 0, position[i + 1] ?? 0, position[i + 2] ?? 0),
      signOf(moment.move.side),
    );
  return {
    movement: movementAt(moment),
    part: part.name,
    micPart: solid.part,
    ...touching(solid, [point(part.at), point(part.at + 3)], part.radius),
  };
}

/** The points of both surfaces that face each other. */
export function touching(
  { capsule }: MicSolid,
  moving: Segment,
  radius: Mm,
): Pick<Nearest, 'onMic' | 'onMoving'> {
  const meet = closestBetweenSegments([capsule.a, capsule.b], moving);
  const across = unit(subtract(meet.onSecond, meet.onFirst), vec(0, 0, 1));
  return {
    onMic: along(meet.onFirst, across, capsule.radius),
    onMoving: along(meet.onSecond, across, -radius),
  };
}

function nearestLeg(legs: readonly Leg[], solids: readonly MicSolid[], so: Reach): Reach {
  let reach = so;
  for (const leg of legs) {
    for (const part of ['thigh', 'shin'] as const) {
      const moving = leg[part];
      for (const solid of solids) {
        const { a, b, radius } = solid.capsule;
        const { distance } = closestBetweenSegments([a, b], [moving.a, moving.b]);
        const clearance = distance - radius - moving.radius;
        if (clearance >= reach.clearance) continue;
        const movement: Movement = { kind: 'leg', foot: leg.side, pedal: leg.pedal };
        const points = touching(solid, [moving.a, moving.b], moving.radius);
        reach = { clearance, nearest: { movement, part, micPart: solid.part, ...points } };
      }
    }
  }
  return reach;
}

function atSwing(
  { swing, solid, point }: SwingGap,
  solids: readonly MicSolid[],
): Nearest | undefined {
  const at = solids[solid];
  if (!at) return undefined;
  const { a, b, radius } = at.capsule;
  const onMoving = nearestOnRockingDisc(swing, point);
  // Where the mic's axis itself is swept there is no way to the swing: then its side that faces the cymbal's centre.
  const inward = unit(subtract(swing.centre, point), scale(swing.normal, -1));
  const facing = unit(perpendicular(inward, unit(subtract(b, a), swing.normal)), inward);
  const across = unit(subtract(onMoving, point), facing);
  return {
    movement: { kind: 'swing', cymbal: swing.cymbal },
    part: 'cymbal',
    micPart: at.part,
    onMic: along(point, across, radius),
    onMoving,
  };
}
