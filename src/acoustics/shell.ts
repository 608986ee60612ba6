import { dot, length, perpendicular, subtract, type Vec3 } from '../geometry/vector.ts';
import { toEnergy } from './decibels.ts';
import { PATTERNS, randomEnergyEfficiency } from './pattern.ts';
import { discEnergy, distanceToDisc, type Ear } from './radiation.ts';
import type { Source } from './source.ts';

/** Whether a point is inside a drum's shell, between its heads. */
export function isInside(point: Vec3, { struck, depth }: Source): boolean {
  const from = subtract(point, struck.centre);
  const above = dot(from, struck.normal);
  return above < 0 && above > -depth && length(perpendicular(from, struck.normal)) < struck.radius;
}

/** The drum inside which a point is; undefined in the open. */
export const shellAround = (point: Vec3, sources: readonly Source[]): Source | undefined =>
  sources.find((source) => isInside(point, source));

/** All of a source's surfaces at an ear in the open, as energy relative to its level at 1 m. */
export function openEnergy(ear: Ear, { surfaces }: Source): number {
  let energy = 0;
  for (const surface of surfaces) energy += surface.share * discEnergy(ear, surface);
  return energy;
}

/**
 * H41 What another piece's sound loses on its way into a shell. Behind the heads it has no direction left: the mic takes it as
 *     from all sides (H6), softer by the drum's `shellLoss`. From a port inward the loss grows evenly, in dB, to its whole within
 *     the port's radius. Not counted: that the drum's own sound builds up inside, so that its isolation is at least what is told.
 */
export function shelteredEnergy(ear: Ear, shell: Source, source: Source): number {
  const open = openness(ear.tip, shell);
  const around = openEnergy({ ...ear, pattern: PATTERNS.omni }, source);
  const taken = randomEnergyEfficiency(ear.pattern) * toEnergy(-shell.shellLoss);
  const within = taken * around;
  return open === 0 ? within : openEnergy(ear, source) ** open * within ** (1 - open);
}

/** 1 in the plane of a port, 0 from its radius inward and in a drum without one. */
function openness(point: Vec3, { surfaces }: Source): number {
  const port = surfaces.find(({ name }) => name === 'port');
  return port ? Math.max(0, 1 - distanceToDisc(point, port) / port.radius) : 0;
}
