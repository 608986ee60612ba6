import type { Mm } from '../units/quantity.ts';
import type { Cylinder } from './cylinder.ts';
import { cornersAround, ExpandingHull, type HullCorner } from './expandingHull.ts';
import { add, along, dot, perpendicular, scale, subtract, unit, type Vec3, vec } from './vector.ts';

/**
 * How deep two solids stand in each other: the shortest shift that frees them (mm), and the middle between the two points
 * that lie deepest in the other.
 */
export interface Overlap {
  readonly depth: Mm;
  readonly at: Vec3;
}

const NOWHERE = vec(0, 0, 0);

/** The depth found is at most this much above the true one, mm. */
export const OVERLAP_TOLERANCE: Mm = 0.05;

/**
 * How deep two solid cylinders stand in each other; undefined when they do not. All differences of a point of the one and a
 * point of the other form one convex body, which holds the origin exactly where the two share a point; the depth is the way
 * from the origin to its surface. A hull of its outermost points grows toward that surface where it is nearest
 * (expanding polytope). With a `sweep` the first one counts everywhere on its way from where it is to there.
 */
export function cylinderOverlap(
  p: Cylinder,
  q: Cylinder,
  sweep: Vec3 = NOWHERE,
): Overlap | undefined {
  const outermost = (direction: Vec3): HullCorner => difference(p, q, direction, sweep);
  const freed = (direction: Vec3): boolean => dot(outermost(direction).point, direction) <= 0;
  const between = unit(subtract(q.centre, p.centre), p.axis);
  const likely = [between, p.axis, scale(p.axis, -1), q.axis, scale(q.axis, -1)];
  if (likely.some(freed)) return undefined;
  const hull = new ExpandingHull(cornersAround(outermost));
  for (;;) {
    const face = hull.nearestFace();
    const corner = outermost(face.normal);
    const reach = dot(corner.point, face.normal);
    if (reach <= 0) return undefined;
    if (reach - face.offset <= OVERLAP_TOLERANCE) return { depth: reach, at: hull.middleOf(face) };
    hull.grow(corner);
  }
}

/** The outermost difference of the two in a direction, with the middle of the two points it comes from. */
function difference(p: Cylinder, q: Cylinder, direction: Vec3, sweep: Vec3): HullCorner {
  const onP = along(outermostPoint(p, direction), sweep, Number(dot(direction, sweep) > 0));
  const onQ = outermostPoint(q, scale(direction, -1));
  return { point: subtract(onP, onQ), middle: scale(add(onP, onQ), 0.5) };
}

/** The point of a cylinder that lies farthest in a direction; the middle of all such points where they are many. */
function outermostPoint({ centre, axis, radius, halfHeight }: Cylinder, direction: Vec3): Vec3 {
  const end = along(centre, axis, Math.sign(dot(direction, axis)) * halfHeight);
  const outward = unit(perpendicular(direction, axis), NOWHERE);
  return along(end, outward, radius);
}
