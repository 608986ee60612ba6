import type { Mm } from '../units/quantity.ts';
import type { Capsule } from './capsule.ts';
import { along, subtract, type Vec3 } from './vector.ts';

const clampUnit = (value: number): number => (value < 0 ? 0 : value > 1 ? 1 : value);

/**
 * The gap between two segments, for tight loops: one object is reused for many measurements and holds the last answer.
 * `s` and `t` in [0, 1] run along the first and the second segment; `dx, dy, dz` lead from the first segment's closest
 * point to the second's; `distance` is their length. A segment of no length is a point.
 */
export class SegmentGap {
  s = 0;
  t = 0;
  dx = 0;
  dy = 0;
  dz = 0;
  distance: Mm = 0;
  /** How far the first segment is moved on the plan before it is measured, mm. */
  shiftX: Mm = 0;
  shiftY: Mm = 0;

  /** Measures the segment with its ends at p[i..i+5], shifted, against the one at q[k..k+5]. */
  measure(p: Float64Array, i: number, q: Float64Array, k: number): Mm {
    this.meet(p, i, q, k);
    return this.distance;
  }

  /** Too long to be compiled into its callers: a number that it returned would be an object each time. */
  private meet(p: Float64Array, i: number, q: Float64Array, k: number): void {
    const px = (p[i] as number) + this.shiftX;
    const py = (p[i + 1] as number) + this.shiftY;
    const pz = p[i + 2] as number;
    const qx = q[k] as number;
    const qy = q[k + 1] as number;
    const qz = q[k + 2] as number;
    const ux = (p[i + 3] as number) + this.shiftX - px;
    const uy = (p[i + 4] as number) + this.shiftY - py;
    const uz = (p[i + 5] as number) - pz;
    const vx = (q[k + 3] as number) - qx;
    const vy = (q[k + 4] as number) - qy;
    const vz = (q[k + 5] as number) - qz;
    const rx = px - qx;
    const ry = py - qy;
    const rz = pz - qz;
    const uu = ux * ux + uy * uy + uz * uz;
    const vv = vx * vx + vy * vy + vz * vz;
    const uv = ux * vx + uy * vy + uz * vz;
    const ur = ux * rx + uy * ry + uz * rz;
    const vr = vx * rx + vy * ry + vz * rz;
    // The lines' closest points, then each parameter held to its segment in turn: the squared distance is convex in both.
    const area = uu * vv - uv * uv;
    let s = area > 1e-12 * uu * vv ? clampUnit((uv * vr - ur * vv) / area) : 0;
    let t = vv > 0 ? (uv * s + vr) / vv : 0;
    if (t < 0 || t > 1 || vv === 0) {
      t = clampUnit(t);
      s = uu > 0 ? clampUnit((uv * t - ur) / uu) : 0;
    }
    this.s = s;
    this.t = t;
    this.dx = t * vx - s * ux - rx;
    this.dy = t * vy - s * uy - ry;
    this.dz = t * vz - s * uz - rz;
    this.distance = Math.sqrt(this.dx * this.dx + this.dy * this.dy + this.dz * this.dz);
  }
}

/** Closest points of two segments and their distance (mm), for single measurements. */
export interface SegmentsMeet {
  readonly distance: Mm;
  readonly onFirst: Vec3;
  readonly onSecond: Vec3;
}

export type Segment = readonly [Vec3, Vec3];

const row = ([a, b]: Segment): Float64Array => Float64Array.of(a.x, a.y, a.z, b.x, b.y, b.z);

export function closestBetweenSegments(first: Segment, second: Segment): SegmentsMeet {
  const gap = new SegmentGap();
  gap.measure(row(first), 0, row(second), 0);
  return {
    distance: gap.distance,
    onFirst: along(first[0], subtract(first[1], first[0]), gap.s),
    onSecond: along(second[0], subtract(second[1], second[0]), gap.t),
  };
}

/** Distance between two capsules' surfaces, mm; negative by how deep they overlap, measured between their axes. */
export const capsuleDistance = (p: Capsule, q: Capsule): Mm =>
  closestBetweenSegments([p.a, p.b], [q.a, q.b]).distance - p.radius - q.radius;
