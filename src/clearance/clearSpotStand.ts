import { add, distance, dot, type Vec3, vec } from '../geometry/vector.ts';
import { standSpec } from '../layout/catalogue/standClasses.ts';
import { tidy, tidyAzimuth, tidySpot } from '../layout/edit/tidy.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import type { StandMount } from '../layout/mics/mount.ts';
import { isStruck, type Piece } from '../layout/pieces/piece.ts';
import { holdPoint, placeStandMic } from '../rig/mics/standMic.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import { type Surface, surfaceOf } from '../rig/surface.ts';
import { cosDeg, sinDeg, toDegrees, toRadians } from '../units/angle.ts';
import type { Degrees, Mm, Radians } from '../units/quantity.ts';
import { aimDistance, aimedAt, aimPointOf, isSteep, meeting, turnOf } from './aimPoint.ts';
import { cableRoom } from './cableRoom.ts';
import {
  type ClearSpotFamily,
  type Freedom,
  farther,
  type Leeway,
  movesOfGroups,
  type PointMove,
  type Spot,
} from './clearSpotFamily.ts';
import { type HeldMoves, heldMove, StandMoves } from './standMoves.ts';

/** What the spots of a mic on a stand depend on. */
export interface StandScene {
  readonly mic: Mic;
  readonly mount: StandMount;
  readonly micClass: MicClass;
  /** The first piece that it hears. */
  readonly heard: Piece | undefined;
  /** +1 or -1: the side that is tried first, so that a mirrored kit tries the mirrored one. */
  readonly side: 1 | -1;
}

/** Farthest that a tip is moved each way, mm. */
const FAR: Mm = 512;

/**
 * Rule N1, stands: the tip may move every way, with its aim kept (rule N2). A boom's base stays, or is turned about the present tip together with its
 * feet; a stand without a boom goes along as a whole.
 */
export class StandFamily implements ClearSpotFamily {
  readonly freedoms: readonly Freedom[];
  private readonly scene: StandScene;
  private readonly now: PlacedMic;
  private readonly aim: Vec3 | undefined;
  /** What a mic that keeps its direction must still look at. */
  private readonly surface: Surface | undefined;
  private readonly hasBoom: boolean;

  constructor(scene: StandScene) {
    this.scene = scene;
    const { mic, mount, micClass, heard } = scene;
    this.now = placeStandMic({ mic, micClass }, mount);
    const { tip, axis } = this.now;
    this.aim = isSteep(axis) ? undefined : aimPointOf(tip, axis, heard);
    this.surface = isSteep(axis) ? surfaceUnder(tip, axis, heard) : undefined;
    this.hasBoom = standSpec(mount.stand).boomMax > 0;
    const way = (name: 'x' | 'y' | 'z'): Freedom => ({ name, step: 1, least: -FAR, most: FAR });
    const turn: Freedom = { name: 'baseTurn', step: 1, least: -180, most: 180 };
    const z: Freedom = { ...way('z'), least: Math.max(-FAR, -mount.tip.z) };
    this.freedoms = [way('x'), way('y'), z, ...(this.hasBoom ? [turn] : [])];
  }

  spotAt(values: readonly number[]): Spot | undefined {
    const { mic, micClass } = this.scene;
    const mount = this.mountAt(values);
    const { tip, axis, solids, stand } = placeStandMic({ mic, micClass }, mount);
    if (solids.length !== this.now.solids.length) return undefined;
    return { mount, tip, axis, stand, groups: grouped(solids) };
  }

  leewayOf({ tip, stand, groups }: Spot, halves: readonly number[]): Leeway {
    const { mount, micClass } = this.scene;
    const [x = 0, y = 0, z = 0, baseTurn = 0] = halves;
    const shift = Math.hypot(x, y, z);
    const turns = this.turnsAt(tip, shift);
    const held = heldMove(tip, { shift, ...turns });
    const turn = this.hasBoom ? toRadians(baseTurn) : undefined;
    const onStand =
      stand && new StandMoves(stand, { held, turn, pivot: this.now.tip, mast: mount.mast });
    const moveOf = (solid: MicSolid, group: readonly MicSolid[]): PointMove => {
      const { part, capsule } = solid;
      if (onStand && isOfStand(solid)) return onStand.of(solid);
      const move = farther(held(capsule.a), held(capsule.b));
      const hanging = part === 'bend' ? cableRoom(micClass, group, turns.turn) : 0;
      return hanging === 0 ? move : { room: move.room + hanging, bend: Number.POSITIVE_INFINITY };
    };
    return {
      ...movesOfGroups(groups, moveOf),
      tip: shift,
      axis: toDegrees(turns.axis),
      base: onStand?.base ?? 0,
      beyondReach: onStand?.beyondReach ?? 0,
    };
  }

  /** How much axis and body turn while the tip shifts. The body of a side-address mic turns with its azimuth too. */
  private turnsAt(
    tip: Vec3,
    shift: Mm,
  ): Pick<HeldMoves, 'turn' | 'away' | 'spins'> & { axis: Radians } {
    if (!this.aim) return { axis: 0, turn: 0, away: Number.POSITIVE_INFINITY, spins: false };
    const { whole, level } = aimDistance(tip, this.aim);
    const axis = turnOf(shift, whole);
    return this.scene.micClass.address === 'side'
      ? { axis, turn: axis + turnOf(shift, level), away: level, spins: true }
      : { axis, turn: axis, away: whole, spins: false };
  }

  mayAim(values: readonly number[], halves: readonly number[]): boolean {
    if (!this.surface) return true;
    const { tip, axis } = this.now;
    const [x = 0, y = 0, z = 0] = values;
    const met = meeting(add(tip, vec(this.scene.side * x, y, z)), axis, this.surface);
    if (!met) return false;
    const [aroundX = 0, aroundY = 0, aroundZ = 0] = halves;
    // Where the axis meets the plane moves at most as far as the tip, drawn out by how flat the axis lies on it.
    const around = Math.hypot(aroundX, aroundY, aroundZ) / Math.abs(dot(axis, this.surface.normal));
    const { centre, radius } = this.surface;
    return distance(met.point, centre) <= radius + around && met.ahead >= -around;
  }

  private mountAt(values: readonly number[]): StandMount {
    const { mount, micClass, side } = this.scene;
    const [x = 0, y = 0, z = 0, baseTurn = 0] = values;
    const tip = vec(tidy(mount.tip.x + side * x), tidy(mount.tip.y + y), tidy(mount.tip.z + z));
    const isMoved = x !== 0 || y !== 0 || z !== 0;
    const moved = { ...mount, tip, ...(this.aim && isMoved ? aimedAt(tip, this.aim) : {}) };
    if (this.hasBoom) return this.turned(moved, side * baseTurn);
    const from = holdPoint(mount, micClass);
    const to = holdPoint(moved, micClass);
    return {
      ...moved,
      base: tidySpot(mount.base.x + to.x - from.x, mount.base.y + to.y - from.y),
      mast: mount.mast === null ? null : tidy(mount.mast + to.z - from.z),
    };
  }

  /** The base turned about the present tip. */
  private turned(moved: StandMount, by: Degrees): StandMount {
    if (by === 0) return moved;
    const { base, tip } = this.scene.mount;
    const cos = cosDeg(by);
    const sin = sinDeg(by);
    const x = base.x - tip.x;
    const y = base.y - tip.y;
    return {
      ...moved,
      base: tidySpot(tip.x + cos * x - sin * y, tip.y + sin * x + cos * y),
      turn: tidyAzimuth(moved.turn + by),
    };
  }
}

/** The surface of the first piece heard, if the axis meets it. */
function surfaceUnder(tip: Vec3, axis: Vec3, heard: Piece | undefined): Surface | undefined {
  if (!heard || !isStruck(heard)) return undefined;
  const surface = surfaceOf(heard);
  const met = meeting(tip, axis, surface);
  return met && met.ahead >= 0 && distance(met.point, surface.centre) <= surface.radius
    ? surface
    : undefined;
}

const isOfStand = ({ part }: MicSolid): boolean =>
  part === 'boom' || part === 'mast' || part === 'base';

/** The mic itself, each part of the boom, the mast, and the base. */
function grouped(solids: readonly MicSolid[]): readonly (readonly MicSolid[])[] {
  const long = solids.filter(({ part }) => part === 'boom' || part === 'mast');
  const base = solids.filter(({ part }) => part === 'base');
  const own = solids.filter((solid) => !long.includes(solid) && !base.includes(solid));
  return [own, ...long.map((solid) => [solid]), base];
}
