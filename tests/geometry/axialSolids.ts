import fc from 'fast-check';
import type { Cylinder, PiercedDisc, Tube } from '../../src/geometry/cylinder.ts';
import { length, unit, type Vec3, vec } from '../../src/geometry/vector.ts';

export const UP = vec(0, 0, 1);

/** To a tenth of a millimetre: a general library stumbles over numbers next to 0. */
export const tenths = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 10 * min, max: 10 * max }).map((count) => count / 10);

/** A point in a cube of twice `most` about the origin. */
export const pointWithin = (most: number): fc.Arbitrary<Vec3> =>
  fc
    .tuple(tenths(-most, most), tenths(-most, most), tenths(-most, most))
    .map((p): Vec3 => vec(...p));

/** Any direction. */
export const direction: fc.Arbitrary<Vec3> = pointWithin(1)
  .filter((p) => length(p) > 0.1)
  .map((p) => unit(p, UP));

/** From cymbals to kicks. */
export const cylinderAlong = (axis: fc.Arbitrary<Vec3>): fc.Arbitrary<Cylinder> =>
  fc.record({
    centre: pointWithin(200),
    axis,
    radius: tenths(30, 300),
    halfHeight: fc.oneof(fc.constant(3), tenths(3, 250)),
  });

/**
 * Distances of single points, for checking by dense samples: independent of the product's code, each written from its
 * solid's section. `end` is the distance past the end, `side` past the side.
 */
function inSection(
  p: Vec3,
  centre: Vec3,
  axis: Vec3,
): { readonly z: number; readonly rho: number } {
  const d = vec(p.x - centre.x, p.y - centre.y, p.z - centre.z);
  const z = d.x * axis.x + d.y * axis.y + d.z * axis.z;
  return { z, rho: Math.hypot(d.x - z * axis.x, d.y - z * axis.y, d.z - z * axis.z) };
}

const outside = (end: number, side: number): number =>
  end > 0 && side > 0 ? Math.hypot(end, side) : Math.max(end, side);

/** How far a point lies outside a cylinder, mm; negative inside. */
export function outsideCylinder(p: Vec3, { centre, axis, radius, halfHeight }: Cylinder): number {
  const { z, rho } = inSection(p, centre, axis);
  return outside(Math.abs(z) - halfHeight, rho - radius);
}

/** How far a point lies outside a ring, mm; negative inside its wall. */
export function outsideTube(p: Vec3, tube: Tube): number {
  const { z, rho } = inSection(p, tube.centre, tube.axis);
  const wall = rho < tube.innerRadius ? tube.innerRadius - rho : rho - tube.outerRadius;
  const side = wall > 0 ? wall : -Math.min(rho - tube.innerRadius, tube.outerRadius - rho);
  return outside(Math.abs(z) - tube.halfHeight, side);
}

/** Distance of a point from a disc with a hole, mm. */
export function fromPiercedDisc(p: Vec3, disc: PiercedDisc): number {
  const { z, rho } = inSection(p, disc.centre, disc.axis);
  const hole = disc.holeRadius - inSection(p, disc.holeCentre, disc.axis).rho;
  if (hole > 0) return Math.hypot(z, hole);
  return rho > disc.radius ? Math.hypot(z, rho - disc.radius) : Math.abs(z);
}
