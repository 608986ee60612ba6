import type { Mm } from '../units/quantity.ts';

/**
 * Frames a point can be given in: `kit` has its origin on the deck under the throne's centre, x to the player's right,
 * y forward to the audience, z up; `deck` has its origin at the deck's centre, with the same sense of its axes.
 */
export type Frame = 'kit' | 'deck';

/** A point or direction in space (mm, or a unit vector). The frame keeps kit and deck points apart in the types. */
export interface Vec3<F extends Frame = 'kit'> {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly __frame?: F;
}

/** A point or direction on the plan. */
export interface Vec2<F extends Frame = 'kit'> {
  readonly x: number;
  readonly y: number;
  readonly __frame?: F;
}

export const vec = (x: number, y: number, z: number): Vec3 => ({ x, y, z });
export const add = (p: Vec3, q: Vec3): Vec3 => vec(p.x + q.x, p.y + q.y, p.z + q.z);
export const subtract = (p: Vec3, q: Vec3): Vec3 => vec(p.x - q.x, p.y - q.y, p.z - q.z);
export const scale = (p: Vec3, k: number): Vec3 => vec(p.x * k, p.y * k, p.z * k);
/** p + k d: the point reached from p along d. */
export const along = (p: Vec3, d: Vec3, k: number): Vec3 =>
  vec(p.x + d.x * k, p.y + d.y * k, p.z + d.z * k);
export const dot = (p: Vec3, q: Vec3): number => p.x * q.x + p.y * q.y + p.z * q.z;
export const cross = (p: Vec3, q: Vec3): Vec3 =>
  vec(p.y * q.z - p.z * q.y, p.z * q.x - p.x * q.z, p.x * q.y - p.y * q.x);
export const length = (p: Vec3): Mm => Math.sqrt(dot(p, p));
/** Without a vector between: it is asked for everywhere. */
export function distance(p: Vec3, q: Vec3): Mm {
  const x = p.x - q.x;
  const y = p.y - q.y;
  const z = p.z - q.z;
  return Math.sqrt(x * x + y * y + z * z);
}

/** The unit vector along p; `fallback` where p has no direction (shorter than 1e-12). */
export function unit(p: Vec3, fallback: Vec3): Vec3 {
  const size = length(p);
  return size < 1e-12 ? fallback : vec(p.x / size, p.y / size, p.z / size);
}

/** The part of p perpendicular to the unit vector n. */
export const perpendicular = (p: Vec3, n: Vec3): Vec3 => along(p, n, -dot(p, n));
