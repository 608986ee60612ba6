import type { Vec3 } from '../geometry/vector.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { capsuleRows } from './micShape.ts';

/** A mic's solids in one place, kit frame: as they are, as rows of numbers, and a ball round all of them. */
export interface MicPose {
  readonly solids: readonly MicSolid[];
  /** Six numbers a solid: both ends of its axis. */
  readonly axes: Float64Array;
  readonly radii: Float64Array;
  readonly centre: Vec3;
  readonly size: Mm;
}

export function micPose(solids: readonly MicSolid[]): MicPose {
  const { axes, radii } = capsuleRows(solids);
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const [index, radius] of radii.entries()) {
    for (let k = 0; k < 6; k++) {
      const value = axes[index * 6 + k] as number;
      low[k % 3] = Math.min(low[k % 3] as number, value - radius);
      high[k % 3] = Math.max(high[k % 3] as number, value + radius);
    }
  }
  const middle = (axis: number): Mm => ((low[axis] as number) + (high[axis] as number)) / 2;
  const centre = { x: middle(0), y: middle(1), z: middle(2) };
  return { solids, axes, radii, centre, size: sizeAbout(centre, axes, radii) };
}

/** Radius of the ball about a point that holds all solids. */
function sizeAbout({ x, y, z }: Vec3, axes: Float64Array, radii: Float64Array): Mm {
  let size = 0;
  for (let end = 0; end < axes.length; end += 3) {
    const dx = (axes[end] as number) - x;
    const dy = (axes[end + 1] as number) - y;
    const dz = (axes[end + 2] as number) - z;
    const far = Math.sqrt(dx * dx + dy * dy + dz * dz) + (radii[Math.floor(end / 6)] as number);
    if (far > size) size = far;
  }
  return size;
}

/** Squared distance from a point to the segment between the points at p[i] and p[i + 3]. */
export function squaredToPoint(p: Float64Array, i: number, { x, y, z }: Vec3): number {
  const ax = p[i] as number;
  const ay = p[i + 1] as number;
  const az = p[i + 2] as number;
  const vx = (p[i + 3] as number) - ax;
  const vy = (p[i + 4] as number) - ay;
  const vz = (p[i + 5] as number) - az;
  const wx = x - ax;
  const wy = y - ay;
  const wz = z - az;
  const along = wx * vx + wy * vy + wz * vz;
  const size = vx * vx + vy * vy + vz * vz;
  const t = along <= 0 ? 0 : along >= size ? 1 : along / size;
  const dx = wx - t * vx;
  const dy = wy - t * vy;
  const dz = wz - t * vz;
  return dx * dx + dy * dy + dz * dz;
}
