import { along, distance, dot, length, subtract, type Vec3, vec } from '../geometry/vector.ts';
import { tidy, tidyAzimuth } from '../layout/edit/tidy.ts';
import type { StandMount } from '../layout/mics/mount.ts';
import { isStruck, type Piece } from '../layout/pieces/piece.ts';
import { type Surface, surfaceOf } from '../rig/surface.ts';
import { cosDeg, toDegrees } from '../units/angle.ts';
import type { Mm, Radians } from '../units/quantity.ts';

/** Nearer than this before the mic there is nothing to aim at. */
const NEAREST: Mm = 20;
/** Sine of the height above or below from which a mic looks too steeply to be turned toward its aim. */
const STEEP = cosDeg(15);
/** An axis that lies flatter on a surface than this (as a sine) does not meet it. */
const FLAT = 1e-6;

/**
 * Rule N2, what a mic on a stand is aimed at: the point of its axis where that meets the surface of the first piece that it hears, or else the point
 * nearest to the piece's middle. Undefined where that is not ahead, and for a mic that hears nothing.
 */
export function aimPointOf(tip: Vec3, axis: Vec3, heard: Piece | undefined): Vec3 | undefined {
  if (!heard || heard.kind === 'throne') return undefined;
  const surface = isStruck(heard) ? surfaceOf(heard) : undefined;
  const met = surface && meeting(tip, axis, surface);
  if (met && surface && distance(met.point, surface.centre) <= surface.radius) {
    return met.ahead >= NEAREST ? met.point : undefined;
  }
  const middle = vec(heard.x, heard.y, heard.kind === 'pedal' ? 0 : heard.z);
  const ahead = dot(subtract(middle, tip), axis);
  return ahead >= NEAREST ? along(tip, axis, ahead) : undefined;
}

/** Where the axis of a mic meets the plane of a surface, and how far ahead; undefined where they are level. */
export function meeting(
  tip: Vec3,
  axis: Vec3,
  { centre, normal }: Surface,
): { readonly point: Vec3; readonly ahead: Mm } | undefined {
  const toward = dot(axis, normal);
  if (Math.abs(toward) < FLAT) return undefined;
  const ahead = dot(subtract(centre, tip), normal) / toward;
  return { point: along(tip, axis, ahead), ahead };
}

/**
 * Rule N2: a mic that looks at its aim within 15 degrees of the vertical is not turned toward it when it is moved, so that its body does not spin; it
 * keeps its direction.
 */
export const isSteep = (axis: Vec3): boolean => Math.abs(axis.z) > STEEP;

/** The direction in which a mic whose tip is moved to a point looks at its aim. */
export function aimedAt(tip: Vec3, aim: Vec3): Pick<StandMount, 'azimuth' | 'pitch'> {
  const { x, y, z } = subtract(aim, tip);
  return {
    azimuth: tidyAzimuth(toDegrees(Math.atan2(y, x))),
    pitch: tidy(toDegrees(Math.atan2(z, Math.hypot(x, y)))),
  };
}

/** How far the aim is from a tip, in space and on the plan, mm. */
export function aimDistance(tip: Vec3, aim: Vec3): { readonly whole: Mm; readonly level: Mm } {
  const way = subtract(aim, tip);
  return { whole: length(way), level: Math.hypot(way.x, way.y) };
}

/** How much the direction to something turns at most while the eye shifts: the angle under which the shift is seen from it. */
export const turnOf = (shift: Mm, away: Mm): Radians =>
  shift < away ? Math.asin(shift / away) : Math.PI;
