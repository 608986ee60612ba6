import type { Mm } from '../units/quantity.ts';
import { type Bounds, boundsOfCylinder, joined } from './bounds.ts';
import type { Capsule } from './capsule.ts';
import { type CapsuleContact, capsuleToCylinder } from './capsuleContact.ts';
import type { Cylinder } from './cylinder.ts';
import { cylinderOverlap, type Overlap } from './cylinderOverlap.ts';
import { leastConvex } from './least.ts';
import { along, type Vec3, vec } from './vector.ts';

/** All that a solid cylinder passes on its way straight up by `rise`, both ends included. */
export interface LiftedCylinder {
  readonly cylinder: Cylinder;
  readonly rise: Mm;
}

const UP = vec(0, 0, 1);
const raised = (p: Vec3, by: Mm): Vec3 => along(p, UP, by);

export const boundsOfLifted = ({ cylinder, rise }: LiftedCylinder): Bounds => {
  const start = boundsOfCylinder(cylinder);
  return joined([start, { low: start.low, high: raised(start.high, rise) }]) ?? start;
};

/**
 * How near a capsule comes to a cylinder on its way. The gap at a height is that of the capsule lowered by as much; it is convex in the
 * height, so that one search finds the least.
 */
export function capsuleToLifted(capsule: Capsule, lifted: LiftedCylinder): CapsuleContact {
  const { cylinder, rise } = lifted;
  const at = (share: number): CapsuleContact =>
    capsuleToCylinder(
      { ...capsule, a: raised(capsule.a, -share * rise), b: raised(capsule.b, -share * rise) },
      cylinder,
    );
  const least = leastConvex((share) => at(share).gap);
  const contact = at(least.at);
  return { gap: contact.gap, at: raised(contact.at, least.at * rise) };
}

/** How deep another cylinder stands in a cylinder's way; undefined when it does not. */
export const liftedOverlap = (
  { cylinder, rise }: LiftedCylinder,
  other: Cylinder,
): Overlap | undefined => cylinderOverlap(cylinder, other, vec(0, 0, rise));
