import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { changeFrom, costOf } from './clearSpotCost.ts';
import type { ClearSpotFamily, Freedom } from './clearSpotFamily.ts';
import { isPossible } from './clearSpotTrial.ts';

/** The strides of a look all round, mm and degrees, and the most of them either way. */
export type Strides = Readonly<
  Record<Freedom['name'], { readonly stride: number; readonly most: number }>
>;

/** A clip has less room than a stand. */
const OF_CLIPS = {
  angle: { stride: 15, most: 12 },
  pitch: { stride: 15, most: 6 },
  reach: { stride: 30, most: 10 },
  height: { stride: 30, most: 10 },
} as const;

export const ROUGH: Strides = {
  ...OF_CLIPS,
  x: { stride: 60, most: 6 },
  y: { stride: 60, most: 6 },
  z: { stride: 60, most: 6 },
  baseTurn: { stride: 45, most: 4 },
};

/** Some twenty times as many places for a mic on a boom: a second's work. */
export const CLOSE: Strides = {
  ...OF_CLIPS,
  x: { stride: 30, most: 8 },
  y: { stride: 30, most: 8 },
  z: { stride: 30, most: 8 },
  baseTurn: { stride: 30, most: 6 },
};

/** A place of the look all round. */
export interface Place {
  readonly values: readonly number[];
  readonly cost: Mm;
}

/** Rule N5, the look all round: a lattice of spots about the present one that cost less than `dearest` mm, the cheapest first. */
export function placesAround(
  family: ClearSpotFamily,
  now: PlacedMic,
  { strides, dearest }: { readonly strides: Strides; readonly dearest: Mm },
): readonly Place[] {
  const places: Place[] = [];
  for (const values of lattice(family.freedoms, strides)) {
    const spot = family.spotAt(values);
    if (!spot || !isPossible(family, values, spot)) continue;
    const cost = costOf(changeFrom(now, spot));
    if (cost < dearest) places.push({ values, cost });
  }
  return places.sort((p, q) => p.cost - q.cost);
}

/** Whether two places are neighbours in the rough lattice, or nearer. */
export const areNear = (
  freedoms: readonly Freedom[],
  p: readonly number[],
  q: readonly number[],
): boolean =>
  freedoms.every((freedom, k) => Math.abs((p[k] ?? 0) - (q[k] ?? 0)) <= ROUGH[freedom.name].stride);

function lattice(freedoms: readonly Freedom[], strides: Strides): readonly (readonly number[])[] {
  let all: readonly (readonly number[])[] = [[]];
  for (const freedom of freedoms) {
    const steps = stepsOf(freedom, strides);
    all = all.flatMap((values) => steps.map((step) => [...values, step]));
  }
  return all;
}

/** Whole strides within the limits, either way. */
function stepsOf(freedom: Freedom, strides: Strides): readonly number[] {
  const { stride, most } = strides[freedom.name];
  return Array.from({ length: 2 * most + 1 }, (_, k) => (k - most) * stride).filter(
    (value) => value >= freedom.least && value <= freedom.most,
  );
}
