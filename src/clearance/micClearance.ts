import { nearestOnRockingDisc } from '../geometry/rockingDisc.ts';
import { closestBetweenSegments, type Segment, SegmentGap } from '../geometry/segments.ts';
import { along, perpendicular, scale, subtract, unit, type Vec3, vec } from '../geometry/vector.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { POSITION } from '../player/arm.ts';
import { mirrored, signOf } from '../player/hands.ts';
import { type Leg, legsOf } from '../player/legs.ts';
import type { Move } from '../player/move.ts';
import { type Playing, playingOf } from '../player/moves.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { type MicShape, type MicShapes, micShapes } from './micShape.ts';
import { MoveSearch, type NearestMoment } from './moveSearch.ts';
import type { Movement, Nearest } from './nearest.ts';
import { type Bounds, TOLERANCE, UNBOUNDED } from './searchBounds.ts';
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

/** A reach with the move that comes nearest; undefined where that is no move. */
export interface KnownReach {
  readonly reach: Reach;
  readonly move: Move | undefined;
}

/**
 * The clearance of a mic (rule C1): the least distance between its solids and everything that moves. At or below the exact minimum of
 * the model by at most twice TOLERANCE; infinite when nothing comes below the limit; what is known to be below `enough` may be lower still.
 */
export const reachOf = (
  motion: Motion,
  mic: Pick<PlacedMic, 'solids'>,
  bounds: Bounds = UNBOUNDED,
): Reach => knownReachOf(motion, mic, bounds).reach;

/** As {@link reachOf}, with what is needed to go on from there when some of the moves change. */
export function knownReachOf(
  motion: Motion,
  { solids }: Pick<PlacedMic, 'solids'>,
  bounds: Bounds = UNBOUNDED,
): KnownReach {
  const shapes = micShapes(solids);
  // What stands still or swings costs little to measure and gives the search of the moves a limit to start from.
  const still = stillReach(motion, solids, shapes, bounds);
  const moment = new MoveSearch(motion.swept, shapes).nearest({
    ...bounds,
    limit: still.clearance,
  });
  return known(moment ? momentReach(moment, motion, solids) : { reach: still }, bounds);
}

/**
 * As {@link knownReachOf}, from what was known `before` the motion last changed: as near to the exact minimum, but perhaps not the same within
 * TOLERANCE. All moves that are left stay at or above what was found then, less TOLERANCE: as long as that is still there, or something as near,
 * only the new moves can be nearer.
 */
export function reachAgain(
  motion: Motion,
  { solids }: Pick<PlacedMic, 'solids'>,
  before: KnownReach,
): KnownReach {
  const { swept } = motion;
  const shapes = micShapes(solids);
  const still = stillReach(motion, solids, shapes, UNBOUNDED);
  const least = before.reach.clearance + TOLERANCE;
  const isLeft = before.move !== undefined && swept.indexOf(before.move) !== undefined;
  const all = !isLeft && still.clearance > least;
  const limit = isLeft ? Math.min(least, still.clearance) : still.clearance;
  const moment = new MoveSearch(swept, shapes).nearest({
    ...UNBOUNDED,
    limit,
    ...(all ? {} : { moves: swept.fresh }),
  });
  if (moment) return known(momentReach(moment, motion, solids), UNBOUNDED);
  return isLeft && least <= still.clearance ? before : known({ reach: still }, UNBOUNDED);
}

/** What was found, lowered by what it may be too high. */
function known(
  { reach, move }: { readonly reach: Reach; readonly move?: Move },
  { tolerance }: Bounds,
): KnownReach {
  const { clearance, nearest } = reach;
  return nearest
    ? { reach: { clearance: clearance - tolerance, nearest }, move }
    : { reach: { clearance: Number.POSITIVE_INFINITY, nearest: undefined }, move: undefined };
}

/** The least distance below the limit to what stands still or swings. */
function stillReach(
  { legs, swings }: Motion,
  solids: readonly MicSolid[],
  { right }: MicShapes,
  { limit, tolerance }: Bounds,
): Reach {
  const reach = nearestLeg(legs, solids, right, limit);
  const swing = nearestSwing(swings, solids, { limit: reach.clearance, tolerance });
  return swing ? { clearance: swing.clearance, nearest: atSwing(swing, solids) } : reach;
}

const momentReach = (
  moment: NearestMoment,
  motion: Motion,
  solids: readonly MicSolid[],
): { readonly reach: Reach; readonly move: Move } => ({
  reach: { clearance: moment.clearance, nearest: atMoment(moment, motion, solids) },
  move: moment.move,
});

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

const LIMBS = ['thigh', 'shin'] as const;

/** The nearest of the legs' parts below the clearance given; `shape` is the mic's in the kit frame. */
function nearestLeg(
  legs: readonly Leg[],
  solids: readonly MicSolid[],
  shape: MicShape,
  limit: Mm,
): Reach {
  const gap = new SegmentGap();
  const limb = new Float64Array(6);
  let clearance = limit;
  let found: { leg: Leg; part: 'thigh' | 'shin'; solid: MicSolid } | undefined;
  for (const leg of legs) {
    for (const part of LIMBS) {
      const { a, b, radius } = leg[part];
      limb[0] = a.x;
      limb[1] = a.y;
      limb[2] = a.z;
      limb[3] = b.x;
      limb[4] = b.y;
      limb[5] = b.z;
      for (let index = 0; index < solids.length; index++) {
        const solid = solids[index] as MicSolid;
        const distance = gap.measure(shape.axes, index * 6, limb, 0);
        const here = distance - solid.capsule.radius - radius;
        if (here >= clearance) continue;
        clearance = here;
        found = { leg, part, solid };
      }
    }
  }
  if (!found) return { clearance, nearest: undefined };
  const { leg, part, solid } = found;
  const { a, b, radius } = leg[part];
  const movement: Movement = { kind: 'leg', foot: leg.side, pedal: leg.pedal };
  const points = touching(solid, [a, b], radius);
  return { clearance, nearest: { movement, part, micPart: solid.part, ...points } };
}

/** A swing's gap with the points of both surfaces that face each other. */
export function atSwing(
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
