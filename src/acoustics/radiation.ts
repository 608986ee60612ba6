import { cross, dot, subtract, unit, type Vec3, vec } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';
import { type DiscRule, ruleFor } from './discRule.ts';
import { LEAST_ENERGY, type Pattern } from './pattern.ts';

/** A disc that radiates from all of its surface alike. `right` and `ahead` are unit vectors in it; kit frame, mm. */
export interface RadiatingDisc {
  readonly centre: Vec3;
  readonly normal: Vec3;
  readonly right: Vec3;
  readonly ahead: Vec3;
  readonly radius: Mm;
}

/** A mic as far as sound is concerned: where its front is, where it looks (unit vector), how it hears. */
export interface Ear {
  readonly tip: Vec3;
  readonly axis: Vec3;
  readonly pattern: Pattern;
}

/** H15 Nearer than 10 mm counts as 10 mm: a diaphragm stands behind its grille and has a size of its own. */
export const NEAREST: Mm = 10;
const NEAREST_SQUARE = NEAREST * NEAREST;

/** A radiating disc from its centre, unit normal and radius. A mirrored disc has mirrored points (H13). */
export function radiatingDisc(centre: Vec3, normal: Vec3, radius: Mm): RadiatingDisc {
  const right = unit(vec(-normal.y, normal.x, 0), vec(1, 0, 0));
  return { centre, normal, right, ahead: cross(normal, right), radius };
}

/** The distance from a point to the nearest point of a disc. */
export function distanceToDisc(point: Vec3, { centre, normal, radius }: RadiatingDisc): Mm {
  const [x, y, z] = [point.x - centre.x, point.y - centre.y, point.z - centre.z];
  const above = x * normal.x + y * normal.y + z * normal.z;
  const aside = Math.sqrt(Math.max(0, x * x + y * y + z * z - above * above));
  const outside = Math.max(0, aside - radius);
  return Math.sqrt(above * above + outside * outside);
}

/**
 * H16 The energy a mic hears of a disc, relative to what it hears on its axis from a small source of the same power at 1 m:
 *     the mean over the disc's points of sensitivity squared (H4, H5) over distance squared. Free field: each point radiates in all
 *     directions alike, nothing stands in its way.
 */
export function discEnergy(
  { tip, axis, pattern }: Ear,
  disc: RadiatingDisc,
  rule: DiscRule = ruleFor(disc.radius, Math.max(NEAREST, distanceToDisc(tip, disc))),
): number {
  const { right, ahead, radius } = disc;
  const from = subtract(disc.centre, tip);
  const square = dot(from, from);
  const [fromRight, fromAhead] = [dot(from, right), dot(from, ahead)];
  const onAxis = dot(from, axis);
  const [axisRight, axisAhead] = [dot(axis, right), dot(axis, ahead)];
  const { a, b } = pattern;
  let sum = 0;
  for (let i = 0; i < rule.length; i += 2) {
    const x = radius * (rule[i] ?? 0);
    const y = radius * (rule[i + 1] ?? 0);
    const d2 = square + 2 * (x * fromRight + y * fromAhead) + x * x + y * y;
    const inverse = 1 / (d2 > NEAREST_SQUARE ? d2 : NEAREST_SQUARE);
    const s = a + b * (onAxis + x * axisRight + y * axisAhead) * Math.sqrt(inverse);
    const energy = s * s;
    sum += (energy > LEAST_ENERGY ? energy : LEAST_ENERGY) * inverse;
  }
  return (sum * 2e6) / rule.length;
}
