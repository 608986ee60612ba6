import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mm } from '../units/quantity.ts';
import type { OpenLayout } from './session.ts';

/** What was asked for: clear spots of these mics, one of them alone or all that are in the way, and what the step is called. */
export interface ClearRequest {
  readonly mics: readonly Id[];
  readonly whole: boolean;
  readonly label: string;
}

/** A mic that stays as it is, and why: nothing is within reach, the search came to its end without one, it lies where it lies, or the search was ended before it was looked for, or looked for again after another made room. */
export interface LeftMic {
  readonly mic: Id;
  readonly why: 'none-within-reach' | 'none-found' | 'fixed' | 'not-looked' | 'not-again';
  /** The widest margin with which a clear spot was seen; left out where it may stand nowhere, or nothing was looked for. */
  readonly most?: Mm;
}

/** `done` mics are dealt with; for the next one no change smaller than `beyond` mm clears it, and the share `spent` of the longest search is done. */
export interface Working {
  readonly kind: 'working';
  readonly done: number;
  readonly beyond: Mm;
  readonly spent: number;
  /** The next one, where it is looked for once more because others have moved. */
  readonly again?: Id;
  /** Of the mics that are dealt with those that have a spot. */
  readonly found: number;
}

/** Shown as the session's offer: the mics that would move, and those that stay as they are. */
export interface Offered {
  readonly kind: 'offered';
  readonly before: OpenLayout;
  readonly moved: readonly Id[];
  /** Those of the moved for which a smaller change may exist: theirs is the smallest found in the time. */
  readonly unproven: readonly Id[];
  readonly left: readonly LeftMic[];
}

/** In this layout there is none to offer. */
export interface NoneFound {
  readonly kind: 'none';
  readonly layout: Layout;
  readonly left: readonly LeftMic[];
}

export interface SearchFailed {
  readonly kind: 'failed';
  readonly reason: string;
}

/** How the search for clear spots stands. */
export type Clearing = { readonly request: ClearRequest } & (
  | Working
  | Offered
  | NoneFound
  | SearchFailed
);

/** How far the search is; null when none was asked for. It is about what is open, and gone with any change of it. */
export const clearing = createStore<{ readonly current: Clearing | null }>(() => ({
  current: null,
}));

export const useClearing = (): Clearing | null => useStore(clearing, ({ current }) => current);

/** What screens ask of the search. The app connects it to a worker; its answers stand in {@link clearing}. */
export interface ClearSpots {
  /** Looks for clear spots in the open layout; whatever was looked for before is given up. */
  find(request: ClearRequest): void;
  /** Ends the search early and offers what it has found. */
  endEarly(): void;
  /** Gives up what is looked for, and forgets that nothing was found. */
  stop(): void;
}
