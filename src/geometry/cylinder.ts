import type { Mm } from '../units/quantity.ts';
import { dot, type Frame, length, perpendicular, subtract, type Vec3 } from './vector.ts';

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

/** A flat disc without thickness, with a round hole of `holeRadius` about a point of the disc. */
export interface PiercedDisc<F extends Frame = 'kit'> {
  readonly centre: Vec3<F>;
  readonly axis: Vec3<F>;
  readonly radius: Mm;
  readonly holeCentre: Vec3<F>;
  readonly holeRadius: Mm;
}

/**
 * How far a point lies outside a cylinder, mm; negative inside, by the distance to the nearest side or end. This is a
 * convex function of the point.
 */
export function outsideCylinder(p: Vec3, cylinder: Cylinder): Mm {
  const offset = subtract(p, cylinder.centre);
  const past = Math.abs(dot(offset, cylinder.axis)) - cylinder.halfHeight;
  const beside = length(perpendicular(offset, cylinder.axis)) - cylinder.radius;
  return outsideCorner(past, beside);
}

/** How far a point lies outside a tube, mm; negative inside its wall. */
export function outsideTube(p: Vec3, tube: Tube): Mm {
  const offset = subtract(p, tube.centre);
  const past = Math.abs(dot(offset, tube.axis)) - tube.halfHeight;
  const middle = (tube.innerRadius + tube.outerRadius) / 2;
  const wall = (tube.outerRadius - tube.innerRadius) / 2;
  const beside = Math.abs(length(perpendicular(offset, tube.axis)) - middle) - wall;
  return outsideCorner(past, beside);
}

/** Distance of a point from a pierced disc, mm. The hole lies inside the disc. */
export function fromPiercedDisc(p: Vec3, disc: PiercedDisc): Mm {
  const offset = subtract(p, disc.centre);
  const past = Math.abs(dot(offset, disc.axis));
  const beside = length(perpendicular(offset, disc.axis)) - disc.radius;
  const toHole = length(perpendicular(subtract(p, disc.holeCentre), disc.axis));
  return outsideCorner(past, Math.max(beside, disc.holeRadius - toHole, 0));
}

/** Distance from the corner of a section whose two sides are passed by these amounts; both negative is inside. */
function outsideCorner(past: Mm, beside: Mm): Mm {
  if (past <= 0 || beside <= 0) return Math.max(past, beside);
  return Math.sqrt(past * past + beside * beside);
}
