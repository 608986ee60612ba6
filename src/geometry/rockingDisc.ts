import type { Mm } from '../units/quantity.ts';
import { along, distance, dot, length, perpendicular, subtract, type Vec3 } from './vector.ts';

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

/** Nearest of a segment's points to what the disc sweeps, to within `tolerance` mm: `distance` is at most that above the true least. */
export function segmentToRockingDisc(
  disc: RockingDisc,
  segment: readonly [Vec3, Vec3],
  tolerance: Mm,
): { readonly distance: Mm; readonly point: Vec3 } {
  const [a, b] = segment;
  const size = distance(a, b);
  const way = subtract(b, a);
  const at = (t: number) => {
    const point = along(a, way, t);
    return { t, point, distance: rockingDiscDistance(disc, point) };
  };
  let best = at(0);
  const open = [{ low: best, high: at(1) }];
  if (open[0] && open[0].high.distance < best.distance) best = open[0].high;
  // The distance changes at most by the way gone: a stretch whose ends are that far above the best holds nothing nearer.
  for (let stretch = open.pop(); stretch; stretch = open.pop()) {
    const { low, high } = stretch;
    const least = (low.distance + high.distance - (high.t - low.t) * size) / 2;
    if (least >= best.distance - tolerance) continue;
    const middle = at((low.t + high.t) / 2);
    if (middle.distance < best.distance) best = middle;
    open.push({ low, high: middle }, { low: middle, high });
  }
  return best;
}
