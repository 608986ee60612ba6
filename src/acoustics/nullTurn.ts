import {
  along,
  dot,
  perpendicular,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { ClipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import { clipPose } from '../rig/mics/clipMic.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { cosDeg, sinDeg, toDegrees } from '../units/angle.ts';
import type { Decibels, Degrees } from '../units/quantity.ts';
import { type CloseEar, type CloseFigures, closeFigures } from './closeFigures.ts';
import { angleOff, type Hearing, levelAt } from './hearing.ts';
import { nullAngle } from './pattern.ts';
import type { Source } from './source.ts';

/** A turn of a mic on the spot that puts its worst neighbour into, or nearer to, its null. */
export interface NullTurn {
  readonly neighbour: Id;
  /** How far the axis turns; what it aims at now lies this far off the new axis. */
  readonly by: Degrees;
  readonly axis: Vec3;
  /** The new aim as the mic's mount takes it; null where a clip keeps its direction round the rim. */
  readonly azimuth: Degrees | null;
  readonly pitch: Degrees;
  /** Whether the neighbour is within a degree of the null. */
  readonly inNull: boolean;
  /** Changes of the neighbour's level, of the own source's and of the isolation. */
  readonly neighbourLevel: Decibels;
  readonly level: Decibels;
  readonly isolation: Decibels;
}

/** H27 What a mic aims at stays within this angle of its axis. */
const MOST: Degrees = 15;
const IN_NULL: Degrees = 1;
/** H27 A turn that gains less is not worth a word. */
const LEAST_GAIN: Decibels = 0.5;

/** How a mount lets its mic turn: a stand every way, a clip only in the plane of its pitch. */
export type Turning =
  | { readonly kind: 'any' }
  | { readonly kind: 'pitch'; readonly mount: ClipMount; readonly drum: Drum };

/** How a mic can be turned; undefined for a plate, which can't. */
export function turningOf(
  { mic: { mount } }: PlacedMic,
  sources: readonly Source[],
): Turning | undefined {
  if (mount.kind === 'stand') return { kind: 'any' };
  if (mount.kind !== 'clip') return undefined;
  const drum = sources.find(({ piece }) => piece.id === mount.drum)?.piece;
  return drum && isDrum(drum) ? { kind: 'pitch', mount, drum } : undefined;
}

/**
 * H27 The smallest turn of at most 15 degrees that puts a neighbour into the null of the pattern, or as near to it as that
 *     allows: in the plane of axis and neighbour, or of a clip's pitch. Offered where the isolation gains half a dB. Patterns
 *     without a null have none.
 */
export function turnToNull(
  turning: Turning,
  close: CloseEar,
  now: CloseFigures,
  neighbour: Hearing,
): NullTurn | undefined {
  const target = nullAngle(close.ear.pattern);
  const source = close.unwanted.find(({ piece }) => piece.id === neighbour.piece);
  if (target === undefined || !source) return undefined;
  const toward = unit(subtract(neighbour.from, close.ear.tip), close.ear.axis);
  const turned =
    turning.kind === 'any'
      ? swung(close.ear.axis, toward, target)
      : leaned(turning.mount, turning.drum, toward, target);
  const ear = { ...close.ear, axis: turned.axis };
  const then = closeFigures({ ...close, ear });
  const isolation = then.isolation - now.isolation;
  if (!(isolation >= LEAST_GAIN)) return undefined;
  return {
    neighbour: neighbour.piece,
    by: angleBetween(close.ear.axis, turned.axis),
    ...turned,
    inNull: Math.abs(angleOff(ear, neighbour.from) - target) <= IN_NULL,
    neighbourLevel: levelAt(ear, source) - neighbour.level,
    level: then.level - now.level,
    isolation,
  };
}

/** The parts of a mic's aim that a turn changes. */
type Turned = Pick<NullTurn, 'axis' | 'azimuth' | 'pitch'>;

/** The axis turned toward or away from a direction, until it lies at the target angle or the turn is spent. */
function swung(axis: Vec3, toward: Vec3, target: Degrees): Turned {
  const turn = Math.max(-MOST, Math.min(MOST, angleBetween(axis, toward) - target));
  // Straight ahead or behind, every way of turning is as good: upward.
  const across = Math.abs(axis.z) > 0.9 ? vec(0, 1, 0) : vec(0, 0, 1);
  const side = unit(perpendicular(toward, axis), unit(perpendicular(across, axis), across));
  const turned = unit(along(scale(axis, cosDeg(turn)), side, sinDeg(turn)), axis);
  return {
    axis: turned,
    azimuth: toDegrees(Math.atan2(turned.y, turned.x)),
    pitch: toDegrees(Math.asin(Math.max(-1, Math.min(1, turned.z)))),
  };
}

/** A clip's pitch, in whole degrees from where it is, that comes nearest to the target angle; the smallest such turn. */
function leaned(mount: ClipMount, drum: Drum, toward: Vec3, target: Degrees): Turned {
  const misses = Array.from({ length: 2 * MOST + 1 }, (_, i) => mount.pitch + i - MOST)
    .filter((pitch) => pitch >= -10 && pitch <= 90)
    .map((pitch) => {
      const { axis } = clipPose({ ...mount, pitch }, drum);
      const miss = Math.abs(angleBetween(axis, toward) - target);
      return { pitch, axis, miss, turn: Math.abs(pitch - mount.pitch) };
    })
    .toSorted((p, q) => p.miss - q.miss || p.turn - q.turn);
  const [best = { pitch: mount.pitch, axis: clipPose(mount, drum).axis }] = misses;
  return { axis: best.axis, azimuth: null, pitch: best.pitch };
}

const angleBetween = (p: Vec3, q: Vec3): Degrees =>
  toDegrees(Math.acos(Math.max(-1, Math.min(1, dot(p, q)))));
