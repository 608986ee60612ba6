import type { Capsule } from '../geometry/capsule.ts';
import { isSameList } from '../geometry/remembered.ts';
import { along, type Vec3, vec } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { FOREARM_RADIUS } from '../player/arm.ts';
import { type Beater, beatersOf } from '../player/beater.ts';
import { type Body, bodyOf } from '../player/body.ts';
import { type Foot, feetOf } from '../player/feet.ts';
import { mirrored, type Side, signOf } from '../player/hands.ts';
import { type Leg, legsOf } from '../player/legs.ts';
import { type Seated, seatedOf } from '../player/seated.ts';
import type { Mm } from '../units/quantity.ts';

/** The player as capsules, kit frame, for drawing: who sits where. All but the arms at rest is what mics are judged by. */
export interface Figure extends Seated {
  /** Upper arm and forearm of each side, at rest beside the body: the arms' lengths are the model's, where they rest is not. */
  readonly arms: readonly (readonly [upper: Capsule, fore: Capsule])[];
  /** Thigh and shin of each leg, as they count in the clearances. */
  readonly legs: readonly Leg[];
  readonly feet: readonly Foot[];
  readonly beaters: readonly Beater[];
}

/** For drawing, never to compute with: at a stature of 1750 mm, from memory of usual figure drawings. */
const UPPER_ARM_RADIUS = 42 / 1750;

/** Where a resting arm points, as a right arm: the upper arm down, a little out and forward; the forearm forward over the thigh. */
const UPPER = unitOf(45, 90, -318);
const FORE = unitOf(-95, 310, -48);

/** Whether the figure hangs on pieces of a kind: what the feet play. */
export const isUnderfoot = (kind: Piece['kind']): boolean => kind === 'pedal' || kind === 'kick';

/** Figures of layouts; the last one is kept while nothing that it hangs on changed: the player, the pedals and the kicks. */
export function createFigures(): (layout: Pick<Layout, 'player' | 'pieces'>) => Figure {
  let last:
    | { readonly player: Player; readonly underfoot: readonly Piece[]; readonly figure: Figure }
    | undefined;
  return ({ player, pieces }) => {
    const underfoot = pieces.filter(({ kind }) => isUnderfoot(kind));
    const same = last?.player === player && isSameList(last.underfoot, underfoot);
    last = last && same ? last : { player, underfoot, figure: figureOf(player, underfoot) };
    return last.figure;
  };
}

export function figureOf(player: Player, pieces: readonly Piece[]): Figure {
  const body = bodyOf(player);
  const top = player.seatHeight + body.acromialHeightSitting;
  const sides: readonly Side[] = ['left', 'right'];
  return {
    ...seatedOf(player),
    arms: sides.map((side) => restingArm(body, top, side, UPPER_ARM_RADIUS * player.stature)),
    legs: legsOf(player, pieces),
    feet: feetOf(player, pieces),
    beaters: beatersOf(pieces),
  };
}

function restingArm(body: Body, top: Mm, side: Side, radius: Mm): readonly [Capsule, Capsule] {
  const shoulder = vec(body.biacromialBreadth / 2, 0, top);
  const elbow = along(shoulder, UPPER, body.acromionRadiale);
  const grip = along(elbow, FORE, body.radialeStylion + body.stylionToGripCentre);
  const at = (point: Vec3): Vec3 => mirrored(point, signOf(side));
  return [
    { a: at(shoulder), b: at(elbow), radius },
    { a: at(elbow), b: at(grip), radius: FOREARM_RADIUS },
  ];
}

function unitOf(x: number, y: number, z: number): Vec3 {
  const size = Math.hypot(x, y, z);
  return vec(x / size, y / size, z / size);
}
