import type { Vec2, Vec3 } from '../geometry/vector.ts';
import { STAND_CLASSES } from '../layout/catalogue/standClasses.ts';
import type { StandClass } from '../layout/mics/mount.ts';
import { standReach } from './standReach.ts';

/**
 * S4 A stand serves when its mast and boom, left free, reach the hold point from the base. Those that serve, in the
 *    catalogue's order; the smallest is the first of them.
 */
export const servingStands = (hold: Vec3, base: Vec2): readonly StandClass[] =>
  STAND_CLASSES.filter((spec) => standReach(spec, base, hold, null).beyondReach === 0).map(
    ({ standClass }) => standClass,
  );

/** The smallest stand that serves (S4); undefined when none does. */
export const smallestStand = (hold: Vec3, base: Vec2): StandClass | undefined =>
  servingStands(hold, base)[0];
