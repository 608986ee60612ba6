import { remembered, sameList } from '../../geometry/remembered.ts';
import type { PatchSettings } from '../../layout/patch.ts';
import type { PatchFact } from '../../patch/fact.ts';
import { festivalRank } from '../../patch/festivalOrder.ts';
import { inputList } from '../../patch/inputList.ts';
import { patchFacts } from '../../patch/patchFacts.ts';
import { pickupAmong } from '../../patch/pickup.ts';
import type { PlacedMic, Rig } from '../../rig/placed.ts';

/** What is wrong with the input list and the splits of a rig. */
export type PatchFactsOf = (rig: Rig, patch: PatchSettings) => readonly PatchFact[];

/**
 * The facts of a patch, looked for again only when something changed that they follow from: the patch itself, or of a mic its id, its
 * input, its class or its rank in festival order (O1 to O3). That rank is all that they take from where a mic stands, and it is the same
 * in nearly every frame of a drag.
 */
export function createPatchFacts(): PatchFactsOf {
  const rankAmong = remembered((pieces: Rig['pieces']) => {
    const pickupOf = pickupAmong(pieces);
    const rankOf = festivalRank(pieces);
    return remembered((placed: PlacedMic) => rankOf(pickupOf(placed)));
  });
  const sameBasis = sameList<unknown>();
  let known:
    | {
        readonly basis: readonly unknown[];
        readonly patch: PatchSettings;
        readonly facts: readonly PatchFact[];
      }
    | undefined;
  return (rig, patch) => {
    const rankOf = rankAmong(rig.pieces);
    const basis = sameBasis(
      rig.mics.flatMap((placed): readonly unknown[] => [
        placed.mic.id,
        placed.mic.input,
        placed.micClass,
        ...rankOf(placed),
      ]),
    );
    if (known?.basis !== basis || known.patch !== patch) {
      known = { basis, patch, facts: patchFacts(inputList(rig, patch), patch) };
    }
    return known.facts;
  };
}
