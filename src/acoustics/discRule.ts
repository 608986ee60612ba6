import type { Mm } from '../units/quantity.ts';

/** Points spread evenly over the unit disc: x and y of each in turn. */
export type DiscRule = Float64Array;

/**
 * H13 Points over a disc by an area-even rule: one in the middle, then rings of 6, 12, 18, ... Ring k ends where the area
 *     within holds its share of all points, and its points lie where half of its own area lies within them, so that every point stands
 *     for the same area. Three rings are 37 points; none is a point source.
 */
export function discRule(rings: number): DiscRule {
  const count = pointsOf(rings);
  const points = new Float64Array(2 * count);
  let at = 2;
  for (let ring = 1; ring <= rings; ring += 1) {
    const radius = Math.sqrt((pointsOf(ring) + pointsOf(ring - 1)) / (2 * count));
    for (let i = 0; i < 6 * ring; i += 1) {
      const turn = (Math.PI * i) / (3 * ring);
      points[at] = radius * Math.cos(turn);
      points[at + 1] = radius * Math.sin(turn);
      at += 2;
    }
  }
  return points;
}

const pointsOf = (rings: number): number => 1 + 3 * rings * (rings + 1);

/** The rules in use, the coarsest first. */
const RINGS = [3, 4, 5, 6, 8, 10, 13, 17, 22, 28, 36];
const rules = RINGS.map(discRule);

/** H14 Points lie no farther apart than this share of the distance to the nearest point of the surface. */
const SPACING = 0.6;

/** H14 The coarsest rule that is fine enough for a disc heard from a distance; the finest where none is. */
export function ruleFor(radius: Mm, distance: Mm): DiscRule {
  const needed = Math.PI * (radius / (SPACING * distance)) ** 2;
  const [coarsest = discRule(3)] = rules;
  return rules.find((rule) => rule.length / 2 >= needed) ?? rules.at(-1) ?? coarsest;
}
