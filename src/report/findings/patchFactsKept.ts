import { isSameList, remembered } from '../../geometry/remembered.ts';
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
  const basisAmong = remembered((pieces: Rig['pieces']) => {
    const pickupOf = pickupAmong(pieces);
    const rankOf = festivalRank(pieces);
    return remembered((placed: PlacedMic): MicBasis => {
      const { mic, micClass } = placed;
      return [mic.id, mic.input, micClass, ...rankOf(pickupOf(placed))];
    });
  });
  let known:
    | {
        readonly basis: readonly MicBasis[];
        readonly patch: PatchSettings;
        readonly facts: readonly PatchFact[];
      }
    | undefined;
  return (rig, patch) => {
    const basis = rig.mics.map(basisAmong(rig.pieces));
    const facts =
      known?.patch === patch && isSame(known.basis, basis)
        ? known.facts
        : patchFacts(inputList(rig, patch), patch);
    known = { basis, patch, facts };
    return facts;
  };
}

/** All of a mic that the facts follow from. */
type MicBasis = readonly unknown[];

const isSame = (p: readonly MicBasis[], q: readonly MicBasis[]): boolean =>
  p.length === q.length && p.every((mic, i) => isSameList(mic, q[i] ?? []));
