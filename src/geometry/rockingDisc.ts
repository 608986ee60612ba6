import type { Mm } from '../units/quantity.ts';
import {
  along,
  distance,
  dot,
  length,
  perpendicular,
  subtract,
  unit,
  type Vec3,
  vec,
} from './vector.ts';

/** What a disc sweeps that rocks about any axis through its centre: all within `radius` whose lift off the plane is at most the rocking angle. */
export interface RockingDisc {
  readonly centre: Vec3;
  readonly normal: Vec3;
  readonly radius: Mm;
  /** Sine and cosine of the rocking angle. */
  readonly sin: number;
  readonly cos: number;
}

/** Distance from a point to what the disc sweeps, mm; negative inside, by the way out. Changes at most as fast as the point moves. */
export function rockingDiscDistance(disc: RockingDisc, point: Vec3): Mm {
  const from = subtract(point, disc.centre);
  const lift = Math.abs(dot(from, disc.normal));
  const out = length(perpendicular(from, disc.normal));
  // In the half plane through the normal the swept part is a sector of the circle, lying on the plane and symmetric to it.
  const past = lift * disc.cos - out * disc.sin;
  const size = Math.hypot(lift, out);
  if (past <= 0) return Math.max(size - disc.radius, past);
  const onEdge = Math.max(0, Math.min(disc.radius, out * disc.cos + lift * disc.sin));
  return Math.hypot(out - onEdge * disc.cos, lift - onEdge * disc.sin);
}

/** The point of what the disc sweeps that is nearest to another; inside, that point itself. */
export function nearestOnRockingDisc(disc: RockingDisc, point: Vec3): Vec3 {
  const { centre, normal, radius, sin, cos } = disc;
  const from = subtract(point, centre);
  const rise = dot(from, normal);
  const aside = perpendicular(from, normal);
  const lift = Math.abs(rise);
  const out = length(aside);
  if (lift * cos <= out * sin) return along(centre, from, Math.min(1, radius / length(from)));
  const onEdge = Math.max(0, Math.min(radius, out * cos + lift * sin));
  // Straight over the centre every direction is as near.
  const backward = unit(perpendicular(vec(0, -1, 0), normal), vec(0, 0, 1));
  const foot = along(centre, unit(aside, backward), onEdge * cos);
  return along(foot, normal, Math.sign(rise) * onEdge * sin);
}

/** The point of a segment that is nearest to what the disc sweeps. */
export interface RockingGap {
  readonly distance: Mm;
  readonly point: Vec3;
}

/** How a nearest point is looked for: only below `limit` mm, and to within `tolerance` mm above the true least. */
export interface Search {
  readonly limit: Mm;
  readonly tolerance: Mm;
}

/** Nearest of a segment's points to what the disc sweeps; undefined when none is below the limit (less the tolerance). */
export function segmentToRockingDisc(
  disc: RockingDisc,
  [a, b]: readonly [Vec3, Vec3],
  { limit, tolerance }: Search,
): RockingGap | undefined {
  const size = distance(a, b);
  const way = subtract(b, a);
  let best = limit;
  let nearest = -1;
  const measured = (t: number): Mm => {
    const found = rockingDiscDistance(disc, along(a, way, t));
    if (found < best) {
      best = found;
      nearest = t;
    }
    return found;
  };
  // The distance changes at most by the way gone: a stretch whose ends are that far above the best holds nothing nearer.
  const search = (stretch: Stretch): void => {
    if (stretch.low + stretch.high - stretch.part * size >= 2 * (best - tolerance)) return;
    const part = stretch.part / 2;
    const middle = measured(stretch.from + part);
    search({ from: stretch.from, part, low: stretch.low, high: middle });
    search({ from: stretch.from + part, part, low: middle, high: stretch.high });
  };
  const inMiddle = rockingDiscDistance(disc, along(a, way, 0.5));
  if (inMiddle - size / 2 >= limit - tolerance) return undefined;
  search({ from: 0, part: 1, low: measured(0), high: measured(1) });
  return nearest < 0 ? undefined : { distance: best, point: along(a, way, nearest) };
}

/** A part of a segment, in shares of its length, with the distances at its ends. */
interface Stretch {
  readonly from: number;
  readonly part: number;
  readonly low: Mm;
  readonly high: Mm;
}
