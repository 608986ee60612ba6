import type { Cylinder, Tube } from '../../geometry/cylinder.ts';
import { listed } from '../../geometry/listed.ts';
import { along, type Vec3 } from '../../geometry/vector.ts';
import type { Mm } from '../../units/quantity.ts';

/** What hoop a shell carries: how far it stands beyond the head and outside the shell. */
export interface Rim {
  readonly height: Mm;
  readonly width: Mm;
}

/** P4 A shell is a solid cylinder from its head's centre `depth` mm along -normal. */
export const shellBelow = (head: Vec3, normal: Vec3, radius: Mm, depth: Mm): Cylinder => ({
  centre: along(head, normal, -depth / 2),
  axis: normal,
  radius,
  halfHeight: depth / 2,
});

/** P5 Both ends of a shell carry a hoop: a ring from the shell outward by the rim's width, from the head outward by its height. */
export function hoopsOf({ centre, axis, radius, halfHeight }: Cylinder, rim: Rim): Tube[] {
  if (rim.height === 0 || rim.width === 0) return [];
  const outward = halfHeight + rim.height / 2;
  return listed([outward, -outward], (way) => ({
    centre: along(centre, axis, way),
    axis,
    innerRadius: radius,
    outerRadius: radius + rim.width,
    halfHeight: rim.height / 2,
  }));
}
