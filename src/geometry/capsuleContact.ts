import type { Mm } from '../units/quantity.ts';
import type { Capsule } from './capsule.ts';
import {
  type Cylinder,
  fromPiercedDisc,
  outsideCylinder,
  outsideTube,
  type PiercedDisc,
  type Tube,
} from './cylinder.ts';
import { leastBounded, leastConvex } from './least.ts';
import { along, distance, subtract, type Vec3 } from './vector.ts';

/** How near a capsule comes to a solid: `gap` between the surfaces (mm, negative by how deep they overlap) and where on its axis. */
export interface CapsuleContact {
  readonly gap: Mm;
  readonly at: Vec3;
}

/** Searches that are not convex end this near the true gap, mm. */
export const CONTACT_TOLERANCE: Mm = 0.1;

/** A capsule against a solid cylinder. Inside, the depth is to the nearest side or end. */
export function capsuleToCylinder(capsule: Capsule, cylinder: Cylinder): CapsuleContact {
  const way = subtract(capsule.b, capsule.a);
  const least = leastConvex((t) => outsideCylinder(along(capsule.a, way, t), cylinder));
  return { gap: least.value - capsule.radius, at: along(capsule.a, way, least.at) };
}

/** A capsule against a ring. Exact to {@link CONTACT_TOLERANCE} where they touch; where they do not, the gap is not below 0. */
export const capsuleToTube = (capsule: Capsule, tube: Tube): CapsuleContact =>
  searched(capsule, (p) => outsideTube(p, tube));

/** A capsule against a disc with a hole, on the same terms as {@link capsuleToTube}. */
export const capsuleToPiercedDisc = (capsule: Capsule, disc: PiercedDisc): CapsuleContact =>
  searched(capsule, (p) => fromPiercedDisc(p, disc));

/** `from` is a distance of a point, so it changes by at most the length that the point moves. */
function searched(capsule: Capsule, from: (p: Vec3) => Mm): CapsuleContact {
  const way = subtract(capsule.b, capsule.a);
  const least = leastBounded((t) => from(along(capsule.a, way, t)), {
    rate: distance(capsule.a, capsule.b),
    tolerance: CONTACT_TOLERANCE,
    below: capsule.radius,
  });
  return { gap: least.value - capsule.radius, at: along(capsule.a, way, least.at) };
}
