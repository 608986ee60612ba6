import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Problem } from '../layout/problem.ts';
import type { SignedState } from '../layout/signedState.ts';

/**
 * The storage port: all that the app asks of whatever keeps layouts. Rules, quoted by the contract tests:
 *
 * S1 A save writes only when the stored revision is the expected one, compared inside the transaction that writes; anything
 *    else is a conflict and changes nothing. When exactly the text to be saved is there already, it is saved.
 * S2 'ok' is answered only when the transaction is done, on the disk and not in a buffer of the operating system.
 * S3 Every stored document passes the layout's own check when it is loaded. One that does not is named, kept and handed out
 *    as text; nothing writes over it.
 * S4 Removing is a mark that `restore` takes off again, until `forget`. A removed layout is missing to `load` and `list`, and
 *    a save to it is a conflict; `removed` lists it.
 * S5 Each write is told to the other ports on the same data, in other tabs as well; never to the port that wrote.
 * S6 A refusal changes nothing of what was there.
 * S7 Nothing is overwritten: each revision is a document of its own under (id, revision), with the revision it came from; a head
 *    per layout says which one holds. A save appends a document and moves the head in one transaction.
 * S8 A save whose layout has a sign-off that the revision before did not have is a signed point; a name makes any point a
 *    named one. Old automatic points are thinned by the rules T1 to T4 (`thinning.ts`), all others stay.
 */
export interface StoragePort {
  /** All layouts that are not removed, the last changed first. What could be listed stands beside what refused. */
  list(): Promise<{ readonly rows: readonly StoredRow[]; readonly refusal: Refusal | null }>;
  load(id: Id): Promise<LoadOutcome>;
  /** Stores a layout over the revision it was loaded at; {@link NOTHING_STORED} stores a new one. */
  save(layout: Layout, expected: number): Promise<SaveOutcome>;
  remove(id: Id): Promise<MarkOutcome>;
  restore(id: Id): Promise<MarkOutcome>;
  /** What was removed and can be restored, the last removed first. */
  removed(): Promise<readonly RemovedRow[] | Refusal>;
  /** Sets what the user's hand sets beside a layout; it is no revision. */
  mark(id: Id, marks: Partial<Marks>): Promise<MarkOutcome>;
  /** Every revision there is of a layout, the first one first. */
  revisions(id: Id): Promise<readonly RevisionRow[] | Refusal>;
  loadRevision(id: Id, revision: number): Promise<LoadOutcome>;
  /** Gives a revision a name, so that it stays; the empty name takes it away. */
  nameRevision(id: Id, revision: number, name: string): Promise<MarkOutcome>;
  /** Says that another line, by its last revision, is dealt with. Its revisions stay in the history. */
  settleLine(id: Id, revision: number): Promise<MarkOutcome>;
  /** Drops the old automatic points that the rule no longer keeps. Returns how many. */
  thin(): Promise<number | Refusal>;
  /** Gives up for ever what was removed before this moment (ms since 1970). */
  forget(removedBefore: number): Promise<Refusal | null>;
  /** Calls back when another port changed something here, or when the data can't be reached any more. Returns the way to stop. */
  watch(tell: (change: StorageChange) => void): () => void;
  /** Lets go of the data; the next use reaches for it again. */
  close(): void;
}

/** The revision to expect where nothing is stored yet. Stored revisions count from 1. */
export const NOTHING_STORED = 0;

/** What the user's hand sets beside a layout. */
export interface Marks {
  readonly favourite: boolean;
  readonly archived: boolean;
  /** Short words to find it by. */
  readonly tags: readonly string[];
}

/** What a list shows of one layout, kept beside it so that listing never reads whole layouts. Times are ms since 1970. */
export interface StoredRow extends Marks {
  readonly id: Id;
  readonly name: string;
  readonly venue: string;
  /** When it is played, YYYY-MM-DD. */
  readonly date: string | null;
  readonly player: string;
  readonly pieces: number;
  readonly mics: number;
  /** A small plan, as `kitOutline.ts` writes it. */
  readonly picture: string;
  /** How its last sign-off stands to it; `unknown` where an older version of the app stored it and nothing was saved since. */
  readonly signOff: SignedState | 'unknown';
  readonly changedAt: number;
  readonly revision: number;
  /** Lines of revisions beside this one, from other tablets, that went their own way. */
  readonly otherLines: number;
}

export interface RemovedRow extends StoredRow {
  readonly removedAt: number;
}

/** One revision in a layout's history. */
export interface RevisionRow {
  readonly revision: number;
  /** The revision it was made from; 0 for the first. */
  readonly parent: number;
  readonly at: number;
  /** Empty when nobody named it. */
  readonly name: string;
  /** Who signed it off; null when no new sign-off came with it. */
  readonly signed: string | null;
  /** Who was asked and did not agree; null when nobody was, or agreed. */
  readonly withheld: string | null;
  /** `holds`: the revision that is opened; `aside`: the last one of another line; otherwise null. */
  readonly tip: 'holds' | 'aside' | null;
}

/** The storage did not do it, and what it said. */
export interface Refusal {
  readonly ok: false;
  readonly kind: 'refused';
  /** `quota`: no room; `unavailable`: it can't be opened at all; `other`: anything else. */
  readonly reason: 'quota' | 'unavailable' | 'other';
  readonly detail: string;
}

export type SaveOutcome =
  | { readonly ok: true; readonly revision: number; readonly at: number }
  | { readonly ok: false; readonly kind: 'conflict' }
  | Refusal;

export type LoadOutcome =
  | {
      readonly ok: true;
      readonly layout: Layout;
      readonly revision: number;
      /** When it was stored; null when it is only held in memory. */
      readonly at: number | null;
    }
  | { readonly ok: false; readonly kind: 'missing' }
  | {
      readonly ok: false;
      readonly kind: 'unreadable';
      readonly name: string;
      readonly text: string;
      readonly problems: readonly Problem[];
    }
  | Refusal;

export type MarkOutcome =
  | { readonly ok: true }
  | { readonly ok: false; readonly kind: 'missing' }
  | Refusal;

export type StorageChange =
  | { readonly kind: 'written' | 'removed' | 'restored' | 'marked'; readonly id: Id }
  /** A newer version of the app takes the data over, all data are being cleared, or the browser took the connection away. */
  | { readonly kind: 'closed'; readonly why: 'newer-version' | 'cleared' | 'connection-lost' };

export type ClosedWhy = Extract<StorageChange, { readonly kind: 'closed' }>['why'];
