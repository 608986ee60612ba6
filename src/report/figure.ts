import type { Capsule } from '../geometry/capsule.ts';
import { along, type Vec3, vec } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { FOREARM_RADIUS } from '../player/arm.ts';
import { type Body, bodyOf } from '../player/body.ts';
import { mirrored, type Side, signOf } from '../player/hands.ts';
import { type Leg, legsOf } from '../player/legs.ts';
import type { Mm } from '../units/quantity.ts';

/** The player as capsules, kit frame, for drawing: who sits where. Shoulders, arms' lengths and legs are those of the model. */
export interface Figure {
  readonly trunk: Capsule;
  readonly shoulders: Capsule;
  /** Upper arm and forearm of each side, at rest beside the body. */
  readonly arms: readonly (readonly [upper: Capsule, fore: Capsule])[];
  readonly head: Head;
  /** Thigh and shin of each leg, as they count in the clearances. */
  readonly legs: readonly Leg[];
}

/** An upright egg about a centre. */
export interface Head {
  readonly centre: Vec3;
  readonly breadth: Mm;
  readonly length: Mm;
  readonly height: Mm;
}

/** Proportions for drawing, never to compute with, at a stature of 1750 mm. From memory of usual figure drawings. */
const DRAWN = {
  stature: 1750,
  headOverShoulders: 195,
  headForward: 10,
  headBreadth: 155,
  headLength: 195,
  headHeight: 230,
  shoulderRadius: 62,
  trunkRadius: 120,
  upperArmRadius: 42,
} as const;

/** Where a resting arm points, as a right arm: the upper arm down, a little out and forward; the forearm forward over the thigh. */
const UPPER = unitOf(45, 90, -318);
const FORE = unitOf(-95, 310, -48);

/** Figures of layouts; the last one is kept while nothing that it hangs on changed: the player and the pedals. */
export function createFigures(): (layout: Pick<Layout, 'player' | 'pieces'>) => Figure {
  let last:
    | { readonly player: Player; readonly pedals: readonly Piece[]; readonly figure: Figure }
    | undefined;
  return ({ player, pieces }) => {
    const pedals = pieces.filter(({ kind }) => kind === 'pedal');
    const same =
      last?.player === player &&
      last.pedals.length === pedals.length &&
      last.pedals.every((pedal, i) => pedal === pedals[i]);
    last = last && same ? last : { player, pedals, figure: figureOf(player, pedals) };
    return last.figure;
  };
}

export function figureOf(player: Player, pieces: readonly Piece[]): Figure {
  const body = bodyOf(player);
  const size = player.stature / DRAWN.stature;
  const top = player.seatHeight + body.acromialHeightSitting;
  const half = body.biacromialBreadth / 2;
  const sides: readonly Side[] = ['left', 'right'];
  return {
    trunk: {
      a: vec(0, 0, player.seatHeight + DRAWN.trunkRadius * size),
      b: vec(0, 0, top - DRAWN.shoulderRadius * size),
      radius: DRAWN.trunkRadius * size,
    },
    shoulders: { a: vec(-half, 0, top), b: vec(half, 0, top), radius: DRAWN.shoulderRadius * size },
    arms: sides.map((side) => restingArm(body, top, side, size)),
    head: {
      centre: vec(0, DRAWN.headForward * size, top + DRAWN.headOverShoulders * size),
      breadth: DRAWN.headBreadth * size,
      length: DRAWN.headLength * size,
      height: DRAWN.headHeight * size,
    },
    legs: legsOf(player, pieces),
  };
}

function restingArm(body: Body, top: Mm, side: Side, size: number): readonly [Capsule, Capsule] {
  const shoulder = vec(body.biacromialBreadth / 2, 0, top);
  const elbow = along(shoulder, UPPER, body.acromionRadiale);
  const grip = along(elbow, FORE, body.radialeStylion + body.stylionToGripCentre);
  const at = (point: Vec3): Vec3 => mirrored(point, signOf(side));
  return [
    { a: at(shoulder), b: at(elbow), radius: DRAWN.upperArmRadius * size },
    { a: at(elbow), b: at(grip), radius: FOREARM_RADIUS },
  ];
}

function unitOf(x: number, y: number, z: number): Vec3 {
  const size = Math.hypot(x, y, z);
  return vec(x / size, y / size, z / size);
}
