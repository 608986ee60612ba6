import type { Mm } from '../units/quantity.ts';
import { AxialPath } from './axialPath.ts';
import type { Capsule } from './capsule.ts';
import type { Cylinder, PiercedDisc, Tube } from './cylinder.ts';
import { type Least, leastBounded, leastConvex } from './least.ts';
import { closestBetweenSegments } from './segments.ts';
import { along, subtract, type Vec3 } from './vector.ts';

/** How near a capsule comes to a solid: `gap` between the surfaces (mm, negative by how deep they overlap) and where on its axis. */
export interface CapsuleContact {
  readonly gap: Mm;
  readonly at: Vec3;
}

/** Searches that are not convex end this near the true gap, mm. */
export const CONTACT_TOLERANCE: Mm = 0.1;

/** A capsule against another. Where their axes cross, the depth is both radii. */
export function capsuleToCapsule(capsule: Capsule, other: Capsule): CapsuleContact {
  const near = closestBetweenSegments([capsule.a, capsule.b], [other.a, other.b]);
  return { gap: near.distance - capsule.radius - other.radius, at: near.onFirst };
}

/** A capsule against a solid cylinder. Inside, the depth is to the nearest side or end; as such it is convex along the capsule. */
export function capsuleToCylinder(capsule: Capsule, cylinder: Cylinder): CapsuleContact {
  const { centre, axis, radius, halfHeight } = cylinder;
  const path = new AxialPath([capsule.a, capsule.b], centre, axis);
  const least = leastConvex((t) =>
    pastCorner(path.height(t) - halfHeight, path.fromAxis(t) - radius),
  );
  return contact(capsule, least);
}

/** A capsule against a ring. Exact to {@link CONTACT_TOLERANCE} where they touch; where they do not, the gap is not below 0. */
export function capsuleToTube(capsule: Capsule, tube: Tube): CapsuleContact {
  const { centre, axis, innerRadius, outerRadius, halfHeight } = tube;
  const path = new AxialPath([capsule.a, capsule.b], centre, axis);
  const beside = (least: Mm, most: Mm): Mm => Math.max(least - outerRadius, innerRadius - most);
  const least = leastBounded({
    value: (t) => {
      const fromAxis = path.fromAxis(t);
      return pastCorner(path.height(t) - halfHeight, beside(fromAxis, fromAxis));
    },
    floor: (low, high) =>
      pastCorner(
        path.leastHeight(low, high) - halfHeight,
        beside(path.leastFromAxis(low, high), path.mostFromAxis(low, high)),
      ),
    tolerance: CONTACT_TOLERANCE,
    below: capsule.radius,
  });
  return contact(capsule, least);
}

/** A capsule against a disc with a hole, on the same terms as {@link capsuleToTube}. */
export function capsuleToPiercedDisc(capsule: Capsule, disc: PiercedDisc): CapsuleContact {
  const { centre, axis, radius, holeCentre, holeRadius } = disc;
  const segment = [capsule.a, capsule.b] as const;
  const path = new AxialPath(segment, centre, axis);
  const fromHole = new AxialPath(segment, holeCentre, axis);
  const least = leastBounded({
    value: (t) =>
      pastCorner(
        path.height(t),
        Math.max(0, path.fromAxis(t) - radius, holeRadius - fromHole.fromAxis(t)),
      ),
    floor: (low, high) =>
      pastCorner(
        path.leastHeight(low, high),
        Math.max(
          0,
          path.leastFromAxis(low, high) - radius,
          holeRadius - fromHole.mostFromAxis(low, high),
        ),
      ),
    tolerance: CONTACT_TOLERANCE,
    below: capsule.radius,
  });
  return contact(capsule, least);
}

const contact = ({ a, b, radius }: Capsule, { at, value }: Least): CapsuleContact => ({
  gap: value - radius,
  at: along(a, subtract(b, a), at),
});

/**
 * Distance from the corner of a section whose two sides are passed by these amounts; both negative is inside. It rises with
 * either, so floors of the two give a floor of it.
 */
function pastCorner(end: Mm, side: Mm): Mm {
  if (end <= 0 || side <= 0) return Math.max(end, side);
  return Math.sqrt(end * end + side * side);
}
