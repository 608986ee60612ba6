import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Layout } from '../layout/layout.ts';
import type { FoundSpot, FoundSpots } from '../report/boxSpots.ts';

/** What box spots are compared by. */
export type SpotMeasure = 'cable' | 'longest';

/** How the search for box spots stands; `layout` is the one it was asked for. */
export type BoxSearch =
  | {
      readonly kind: 'working';
      readonly layout: Layout;
      readonly done: number;
      readonly of: number;
    }
  | { readonly kind: 'found'; readonly layout: Layout; readonly spots: FoundSpots }
  | { readonly kind: 'failed'; readonly layout: Layout; readonly reason: string };

interface BoxSearchState {
  /** Null when none was asked for. It is gone as soon as anything changes that it depends on. */
  readonly current: BoxSearch | null;
  readonly by: SpotMeasure;
}

export const boxSearch = createStore<BoxSearchState>(() => ({ current: null, by: 'cable' }));

export const useBoxSearch = (): BoxSearchState => useStore(boxSearch);

export const compareSpotsBy = (by: SpotMeasure): void => boxSearch.setState({ by });

/** The best of what was found, by what they are compared by; best first. */
export const bestSpots = (spots: FoundSpots, by: SpotMeasure): readonly FoundSpot[] =>
  by === 'cable' ? spots.byCable : spots.byLongest;

/** What spots are called on the plan and in the list: A is the best. */
export const SPOT_LETTERS = 'ABCDEFGH';

/** What screens ask of the search. The app connects it to a worker; its answers stand in {@link boxSearch}. */
export interface BoxSpotFinder {
  /** Looks for the best spots of the open layout; whatever was looked for before is given up. */
  find(): void;
  /** Gives up what is looked for, and forgets what was found. */
  stop(): void;
}
