import { distance, dot, subtract, type Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { toDegrees } from '../units/angle.ts';
import type { Decibels, Degrees, Mm } from '../units/quantity.ts';
import { toDecibels } from './decibels.ts';
import { patternOf } from './pattern.ts';
import { discEnergy, distanceToDisc, type Ear } from './radiation.ts';
import { openEnergy, shelteredEnergy } from './shell.ts';
import type { Source } from './source.ts';

/** What a mic hears of one piece. */
export interface Hearing {
  readonly piece: Id;
  /** Sound pressure level, as the mic weighs it by its pattern. */
  readonly level: Decibels;
  /** The middle of the surface it hears most of, kit frame. */
  readonly from: Vec3;
  /** Off the mic's axis, to that point. */
  readonly angle: Degrees;
  /** To the nearest point that radiates. */
  readonly distance: Mm;
}

/** A placed mic as an ear. A boundary plate's class says omni: it hears the half space before its plate. */
export const earOf = ({ tip, axis, micClass }: PlacedMic): Ear => ({
  tip,
  axis,
  pattern: patternOf(micClass.patternA),
});

/**
 * H19 The level of a piece at a mic: its level at 1 m and what of each surface's part arrives (H16), added as energy. `shell` is
 *     the drum inside which the mic is, which shelters it from every other piece (H41).
 */
export const levelAt = (ear: Ear, source: Source, shell?: Source): Decibels =>
  source.level +
  toDecibels(
    shell && shell !== source ? shelteredEnergy(ear, shell, source) : openEnergy(ear, source),
  );

/** H19 with the way it comes; into a shell, the way it would come without it. */
export function hear(ear: Ear, source: Source, shell?: Source): Hearing {
  const { piece, level, surfaces, struck } = source;
  let energy = 0;
  let most = { energy: -1, centre: struck.centre };
  let nearest = Number.POSITIVE_INFINITY;
  for (const surface of surfaces) {
    const arrived = surface.share * discEnergy(ear, surface);
    energy += arrived;
    if (arrived > most.energy) most = { energy: arrived, centre: surface.centre };
    nearest = Math.min(nearest, distanceToDisc(ear.tip, surface));
  }
  return {
    piece: piece.id,
    level: shell ? levelAt(ear, source, shell) : level + toDecibels(energy),
    from: most.centre,
    angle: angleOff(ear, most.centre),
    distance: nearest,
  };
}

/** The angle between a mic's axis and the way to a point. */
export function angleOff({ tip, axis }: Pick<Ear, 'tip' | 'axis'>, point: Vec3): Degrees {
  const way = distance(tip, point);
  if (way === 0) return 0;
  const cos = dot(axis, subtract(point, tip)) / way;
  return toDegrees(Math.acos(Math.min(1, Math.max(-1, cos))));
}
