import type { Vec2, Vec3 } from '../geometry/vector.ts';
import { STAND_CLASSES } from '../layout/catalogue/standClasses.ts';
import type { StandClass } from '../layout/mics/mount.ts';
import { standReach } from './standReach.ts';

/**
 * S4 The smallest stand that serves is the first class in the catalogue's order whose mast and boom, left free, reach the
 *    hold point from the base. Undefined when none does.
 */
export const smallestStand = (hold: Vec3, base: Vec2): StandClass | undefined =>
  STAND_CLASSES.find((spec) => standReach(spec, base, hold, null).beyondReach === 0)?.standClass;
