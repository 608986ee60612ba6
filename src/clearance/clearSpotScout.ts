import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { changeFrom, costOf } from './clearSpotCost.ts';
import type { ClearSpotFamily, Freedom } from './clearSpotFamily.ts';
import { isPossible } from './clearSpotTrial.ts';

/** Strides of the look all round, mm and degrees, and the most of them either way: a clip has less room than a stand. */
const STRIDES = {
  angle: { stride: 15, most: 12 },
  pitch: { stride: 15, most: 6 },
  reach: { stride: 30, most: 10 },
  height: { stride: 30, most: 10 },
  x: { stride: 60, most: 6 },
  y: { stride: 60, most: 6 },
  z: { stride: 60, most: 6 },
  baseTurn: { stride: 45, most: 4 },
} as const;

/** A place of the look all round. */
export interface Place {
  readonly values: readonly number[];
  readonly cost: Mm;
}

/** Rule N5, the look all round: a coarse lattice of all spots about the present one that cost less than `dearest` mm, the cheapest first. */
export function placesAround(
  family: ClearSpotFamily,
  now: PlacedMic,
  dearest: Mm,
): readonly Place[] {
  const places: Place[] = [];
  for (const values of lattice(family.freedoms)) {
    const spot = family.spotAt(values);
    if (!spot || !isPossible(family, values, spot)) continue;
    const cost = costOf(changeFrom(now, spot));
    if (cost < dearest) places.push({ values, cost });
  }
  return places.sort((p, q) => p.cost - q.cost);
}

/** Whether two places are neighbours in the lattice, or nearer. */
export const areNear = (
  freedoms: readonly Freedom[],
  p: readonly number[],
  q: readonly number[],
): boolean =>
  freedoms.every(
    (freedom, k) => Math.abs((p[k] ?? 0) - (q[k] ?? 0)) <= STRIDES[freedom.name].stride,
  );

function lattice(freedoms: readonly Freedom[]): readonly (readonly number[])[] {
  let all: readonly (readonly number[])[] = [[]];
  for (const freedom of freedoms) {
    const steps = stepsOf(freedom);
    all = all.flatMap((values) => steps.map((step) => [...values, step]));
  }
  return all;
}

/** Whole strides within the limits, either way. */
function stepsOf(freedom: Freedom): readonly number[] {
  const { stride, most } = STRIDES[freedom.name];
  return Array.from({ length: 2 * most + 1 }, (_, k) => (k - most) * stride).filter(
    (value) => value >= freedom.least && value <= freedom.most,
  );
}
