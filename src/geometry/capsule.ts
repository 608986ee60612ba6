import type { Mm } from '../units/quantity.ts';
import type { Frame, Vec3 } from './vector.ts';

/** All points within `radius` of the segment from `a` to `b` (a ball where a equals b). */
export interface Capsule<F extends Frame = 'kit'> {
  readonly a: Vec3<F>;
  readonly b: Vec3<F>;
  readonly radius: Mm;
}
