import type { Capsule } from '../../src/geometry/capsule.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { MicSolid, PlacedMic } from '../../src/rig/placed.ts';

/** All starting kits. */
export const startingKits: readonly Layout[] = STARTING_KITS.map((kit) => kit.make(kit.key));

export function startingKit(key: string): Layout {
  const found = startingKits.find(({ id }) => id === key);
  if (!found) throw new Error(`a starting kit ${key} was expected`);
  return found;
}

export const capsules = ({ solids }: Pick<PlacedMic, 'solids'>): readonly Capsule[] =>
  solids.map(({ capsule }) => capsule);

/** A mic of one capsule. */
export const rod = (a: Capsule['a'], b: Capsule['b'], radius: number): readonly MicSolid[] => [
  { part: 'body', capsule: { a, b, radius } },
];
