import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../layout/fields.ts';
import type { SignedState } from '../layout/signedState.ts';
import type { LibraryRow } from './library.ts';

/** What only the analysis of a layout can tell its row in the list. */
export interface RowNeed {
  /** When the layout was changed that it is of: a row that was changed since knows nothing. */
  readonly changedAt: number;
  /** How many findings must be solved, and should be looked at. */
  readonly solve: number;
  readonly look: number;
  readonly signOff: SignedState;
}

/** What is known of the rows of the list, by id; of most rows of most devices, but not of all. */
export const rowNeeds = createStore<{ readonly known: ReadonlyMap<Id, RowNeed> }>(() => ({
  known: new Map(),
}));

/** What is known of a row as it is now; undefined when nothing is. */
export const needOf = (
  known: ReadonlyMap<Id, RowNeed>,
  { id, changedAt }: Pick<LibraryRow, 'id' | 'changedAt'>,
): RowNeed | undefined => {
  const need = known.get(id);
  return need?.changedAt === changedAt ? need : undefined;
};

export const useRowNeed = (row: Pick<LibraryRow, 'id' | 'changedAt'>): RowNeed | undefined =>
  useStore(rowNeeds, ({ known }) => needOf(known, row));
