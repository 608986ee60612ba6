import type { PatchSettings } from '../layout/patch.ts';
import type { PatchFact } from './fact.ts';
import { inputFacts } from './inputFacts.ts';
import type { InputRow } from './inputList.ts';
import { splitFacts } from './splits/splitFacts.ts';

/** Everything wrong with an input list and its splits: I1 to I7, then S1 to S12. */
export function patchFacts(
  rows: readonly InputRow[],
  { splits, micImpedance }: Pick<PatchSettings, 'splits' | 'micImpedance'>,
): readonly PatchFact[] {
  const supplied = new Set(rows.filter(({ phantom }) => phantom.value).map(({ mic }) => mic));
  const mics = new Map(
    rows.map(({ mic, micClass }) => [mic, { id: mic, micClass, phantom: supplied.has(mic) }]),
  );
  return [...inputFacts(rows), ...splitFacts(splits, [...mics.values()], micImpedance)];
}
