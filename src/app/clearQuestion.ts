import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mount } from '../layout/mics/mount.ts';
import type { LeftMic } from '../session/clearing.ts';
import type { Mm } from '../units/quantity.ts';

/** What the page asks of the worker that looks for clear spots: of these mics, one after the other (rules T1 to T3). */
export interface ClearQuestion {
  readonly token: number;
  readonly layout: Layout;
  readonly mics: readonly Id[];
}

/** How a mic would be held; and whether it is known that no change is much smaller. */
export interface ClearedMic {
  readonly mic: Id;
  readonly mount: Mount;
  readonly proven: boolean;
}

/** Every mic asked for that was in the way stands in one of the two. */
export interface Found {
  readonly kind: 'found';
  readonly moved: readonly ClearedMic[];
  readonly left: readonly LeftMic[];
}

/** `done` mics are dealt with; for the next one no change smaller than `beyond` mm clears it, and the share `spent` of the longest search is done. */
export interface Progress {
  readonly kind: 'progress';
  readonly done: number;
  readonly beyond: Mm;
  readonly spent: number;
  /** The next one, where it is looked for once more: until then those that wait for that are not counted as dealt with. */
  readonly again?: Id;
  /** Told when a mic has been dealt with: what would be found if the search ended here. */
  readonly soFar?: Pick<Found, 'moved' | 'left'>;
}

export interface Failed {
  readonly kind: 'failed';
  readonly reason: string;
}

/** `token`: of the question that it answers. */
export type ClearAnswer = { readonly token: number } & (Progress | Found | Failed);
