import type { Mm } from '../units/quantity.ts';
import type { Frame, Vec3 } from './vector.ts';

/** A solid cylinder or disc: `centre` is its middle, `axis` a unit vector, `halfHeight` its half length along the axis. */
export interface Cylinder<F extends Frame = 'kit'> {
  readonly centre: Vec3<F>;
  readonly axis: Vec3<F>;
  readonly radius: Mm;
  readonly halfHeight: Mm;
}

/** A ring with a rectangular section: what lies between two radii about the axis, `halfHeight` to both sides of the centre. */
export interface Tube<F extends Frame = 'kit'> {
  readonly centre: Vec3<F>;
  readonly axis: Vec3<F>;
  readonly innerRadius: Mm;
  readonly outerRadius: Mm;
  readonly halfHeight: Mm;
}

/** A flat disc without thickness, with a round hole of `holeRadius` about a point of the disc. The hole lies inside it. */
export interface PiercedDisc<F extends Frame = 'kit'> {
  readonly centre: Vec3<F>;
  readonly axis: Vec3<F>;
  readonly radius: Mm;
  readonly holeCentre: Vec3<F>;
  readonly holeRadius: Mm;
}
