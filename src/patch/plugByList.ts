import type { Id } from '../layout/fields.ts';
import type { InputRow } from './inputList.ts';

/**
 * Box inputs in the order of the list: the first mic 1, the next 2 and so on; a mic's further channels take none. Mics beyond the
 * box's inputs are numbered on: that there are too many is for a finding to say.
 */
export function plugByList(rows: readonly InputRow[]): ReadonlyMap<Id, number> {
  const mics = [...new Set(rows.map(({ mic }) => mic))];
  return new Map(mics.map((mic, place) => [mic, place + 1]));
}
