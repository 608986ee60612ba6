import { length, perpendicular, subtract, type Vec3 } from '../geometry/vector.ts';
import { tidy, tidyAzimuth } from '../layout/edit/tidy.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import { type ClipMount, clipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import { clipPose, clipSolids } from '../rig/mics/clipMic.ts';
import type { MicSolid } from '../rig/placed.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, toDegrees, toRadians } from '../units/angle.ts';
import type { Mm, Radians } from '../units/quantity.ts';
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

/** What a clip's spots depend on. */
export interface ClipScene {
  readonly mount: ClipMount;
  readonly micClass: MicClass;
  readonly drum: Drum;
  /** +1 or -1: which way round the rim is tried first, so that a mirrored kit tries the mirrored way. */
  readonly side: 1 | -1;
  /** Whether the mic stands in a piece where it is. */
  readonly standsIn: boolean;
  /** The room that is asked for over the drum's head (rule N8), mm: the tip is part of the mic, so it is never lower. */
  readonly overHead: Mm;
}

const ANGLE_STEP = 0.5;
const { reach, height, pitch } = clipMount.shape;
/** No clip is proposed farther inside its rim than this: farther in it hangs where sticks play. Common practice, no source. */
const FARTHEST_IN: Mm = 75;

/**
 * Rule N1, clips: the angle round the rim, the reach, the height and the pitch may change, within their limits, as long as the axis meets the
 * head (where it did before); the reach to 75 mm at most and the height to the room of rule N8 at least, or no farther than where the mic is. Where a mic stands in a piece is no
 * reason to be farther in or lower.
 */
export class ClipFamily implements ClearSpotFamily {
  readonly freedoms: readonly Freedom[];
  private readonly scene: ClipScene;
  private readonly aims: boolean;

  constructor(scene: ClipScene) {
    this.scene = scene;
    const { mount, standsIn, overHead } = scene;
    const already = standsIn ? [] : [0];
    const limits = (
      name: 'reach' | 'height' | 'pitch',
      least: number | null,
      most: number | null,
    ): Freedom => ({
      name,
      step: 1,
      least: Math.min((least ?? mount[name]) - mount[name], ...already),
      most: Math.max((most ?? mount[name]) - mount[name], ...already),
    });
    this.freedoms = [
      { name: 'angle', step: ANGLE_STEP, least: -180, most: 180 },
      limits('reach', reach.minValue, FARTHEST_IN),
      limits('height', overHead, height.maxValue),
      limits('pitch', pitch.minValue, pitch.maxValue),
    ];
    this.aims = meetsHead(scene.drum, [mount.reach, mount.height, mount.pitch], [0, 0, 0]);
  }

  spotAt(values: readonly number[]): Spot {
    const { micClass, drum } = this.scene;
    const mount = this.mountAt(values);
    const { tip, axis } = clipPose(mount, drum);
    const groups = [clipSolids(micClass, mount, drum)];
    return { mount, tip, axis, stand: null, groups };
  }

  leewayOf({ tip, groups }: Spot, halves: readonly number[]): Leeway {
    const { drum, micClass } = this.scene;
    const [angle = 0, alongRim = 0, overHead = 0, tilt = 0] = halves;
    // Angles are those of the plan: on a tilted head the rim turns by up to 1/cos(tilt) as much.
    const turn = angle === 0 ? 0 : toRadians(angle) / cosDeg(drum.tilt);
    const moves = this.pointMoves(tip, {
      turn: Math.min(2, turn),
      nod: Math.min(2, toRadians(tilt)),
      shift: Math.hypot(alongRim, overHead),
    });
    const moveOf = (
      { part, capsule: { a, b } }: MicSolid,
      solids: readonly MicSolid[],
    ): PointMove => {
      if (part === 'clipArm') return farther(moves.onRim(a), moves.held(b));
      const hanging = part === 'bend' ? cableRoom(micClass, solids, turn + toRadians(tilt)) : 0;
      const { room, bend } = farther(moves.held(a), moves.held(b));
      return { room: room + hanging, bend: hanging > 0 ? Number.POSITIVE_INFINITY : bend };
    };
    return {
      ...movesOfGroups(groups, moveOf),
      tip: moves.held(tip).room,
      axis: Math.min(180, toDegrees(turn) + tilt),
      base: 0,
      beyondReach: 0,
    };
  }

  /** How points move: those on the rim go round only; those held also shift with the tip and nod about it, and go round from there. */
  private pointMoves(tip: Vec3, { turn, nod, shift }: ClipMoves): PointMoves {
    const { centre, normal } = surfaceOf(this.scene.drum);
    const fromAxis = (point: Vec3): Mm => length(perpendicular(subtract(point, centre), normal));
    // Along an arc the way bends from its chord by at most an eighth of the squared turn; turning what was moved first is the rest.
    const arc = (radius: Mm, by: Radians): Mm => (by * by * radius) / 8;
    return {
      onRim: (point) => {
        const radius = fromAxis(point);
        return { room: turn * radius, bend: arc(radius, turn) };
      },
      held: (point) => {
        const fromTip = length(subtract(point, tip));
        const radius = fromAxis(point);
        const moved = shift + nod * fromTip;
        return {
          room: moved + turn * (radius + moved),
          bend: turn * moved + arc(radius, turn) + arc(fromTip, nod),
        };
      },
    };
  }

  mayAim(values: readonly number[], halves: readonly number[]): boolean {
    const mount = this.mountAt(values);
    const [, ...others] = halves;
    return (
      !this.aims || meetsHead(this.scene.drum, [mount.reach, mount.height, mount.pitch], others)
    );
  }

  private mountAt(values: readonly number[]): ClipMount {
    const { mount, side } = this.scene;
    const [angle = 0, alongRim = 0, overHead = 0, tilt = 0] = values;
    return {
      ...mount,
      angle: tidyAzimuth(mount.angle + side * angle),
      reach: tidy(mount.reach + alongRim),
      height: tidy(mount.height + overHead),
      pitch: tidy(mount.pitch + tilt),
    };
  }
}

/** How far a clip mic goes round, nods about its tip and shifts with it at most. */
interface ClipMoves {
  readonly turn: Radians;
  readonly nod: Radians;
  readonly shift: Mm;
}

interface PointMoves {
  readonly onRim: (point: Vec3) => PointMove;
  readonly held: (point: Vec3) => PointMove;
}

/**
 * Whether the axis of a clip mic may meet its head, for some reach, height and pitch within halves of the given ones. Along the head the axis
 * goes inward by height / tan(pitch).
 */
function meetsHead(
  { diameter }: Drum,
  [reach = 0, height = 0, pitch = 0]: readonly number[],
  [aroundReach = 0, aroundHeight = 0, aroundPitch = 0]: readonly number[],
): boolean {
  const radius = diameter / 2;
  const steepest = toRadians(Math.min(90, pitch + aroundPitch));
  const flattest = toRadians(pitch - aroundPitch);
  if (steepest <= 0) return false;
  const least = Math.max(0, height - aroundHeight) / Math.tan(steepest);
  const most = flattest > 0 ? (height + aroundHeight) / Math.tan(flattest) : Infinity;
  return (
    radius - (reach + aroundReach) - most <= radius &&
    radius - (reach - aroundReach) - least >= -radius
  );
}
