import type { Cylinder, PiercedDisc, Tube } from '../../src/geometry/cylinder.ts';
import { type Vec3, vec } from '../../src/geometry/vector.ts';

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
