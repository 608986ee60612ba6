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
export const rockingDiscDistance = (disc: RockingDisc, { x, y, z }: Vec3): Mm =>
  discDistance(disc, x, y, z);

/** As {@link rockingDiscDistance}, in numbers alone: a search asks for thousands. */
function discDistance({ centre, normal, radius, sin, cos }: RockingDisc, x: Mm, y: Mm, z: Mm): Mm {
  const fromX = x - centre.x;
  const fromY = y - centre.y;
  const fromZ = z - centre.z;
  const rise = fromX * normal.x + fromY * normal.y + fromZ * normal.z;
  const lift = Math.abs(rise);
  const asideX = fromX - normal.x * rise;
  const asideY = fromY - normal.y * rise;
  const asideZ = fromZ - normal.z * rise;
  const out = Math.sqrt(asideX * asideX + asideY * asideY + asideZ * asideZ);
  // In the half plane through the normal the swept part is a sector of the circle, lying on the plane and symmetric to it.
  const past = lift * cos - out * sin;
  if (past <= 0) return Math.max(Math.sqrt(lift * lift + out * out) - radius, past);
  const onEdge = Math.max(0, Math.min(radius, out * cos + lift * sin));
  const overOut = out - onEdge * cos;
  const overLift = lift - onEdge * sin;
  return Math.sqrt(overOut * overOut + overLift * overLift);
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
  const foot = along(centre, outwardTo(disc, point), onEdge * cos);
  return along(foot, normal, Math.sign(rise) * onEdge * sin);
}

/** The unit vector in the disc's plane from its centre toward a point; of one straight over the centre all are as near, and it is backward. */
export function outwardTo({ centre, normal }: RockingDisc, point: Vec3): Vec3 {
  const backward = unit(perpendicular(vec(0, -1, 0), normal), vec(0, 0, 1));
  return unit(perpendicular(subtract(point, centre), normal), backward);
}

/** The ends of a segment. */
interface Segment {
  readonly a: Vec3;
  readonly b: Vec3;
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
  ends: Segment,
  search: Search,
): RockingGap | undefined {
  const { a, b } = ends;
  const x = b.x - a.x;
  const y = b.y - a.y;
  const z = b.z - a.z;
  const half = Math.sqrt(x * x + y * y + z * z) / 2;
  const inMiddle = discDistance(disc, a.x + x / 2, a.y + y / 2, a.z + z / 2);
  if (inMiddle - half >= search.limit - search.tolerance) return undefined;
  return halvedSegment(disc, ends, search);
}

function halvedSegment(
  disc: RockingDisc,
  { a, b }: Segment,
  { limit, tolerance }: Search,
): RockingGap | undefined {
  const size = distance(a, b);
  const way = subtract(b, a);
  let best = limit;
  let nearest = -1;
  const measured = (t: number): Mm => {
    const found = discDistance(disc, a.x + way.x * t, a.y + way.y * t, a.z + way.z * t);
    if (found < best) {
      best = found;
      nearest = t;
    }
    return found;
  };
  // The distance changes at most by the way gone: a stretch whose ends are that far above the best holds nothing nearer.
  // Stretches are parts of the segment, in shares of its length, with the distances at their ends.
  const search = (from: number, part: number, low: Mm, high: Mm): void => {
    if (low + high - part * size >= 2 * (best - tolerance)) return;
    const half = part / 2;
    const middle = measured(from + half);
    search(from, half, low, middle);
    search(from + half, half, middle, high);
  };
  search(0, 1, measured(0), measured(1));
  return nearest < 0 ? undefined : { distance: best, point: along(a, way, nearest) };
}
