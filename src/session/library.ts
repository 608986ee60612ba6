import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Player } from '../layout/player.ts';
import type { SignedState } from '../layout/signedState.ts';

/** What the user's hand sets beside a layout. */
export interface LibraryMarks {
  readonly favourite: boolean;
  readonly archived: boolean;
  /** Short words to find it by. */
  readonly tags: readonly string[];
}

/** One row of the list of layouts. Times are milliseconds since 1970. */
export interface LibraryRow extends LibraryMarks {
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
  /** How its last sign-off stands to it; `unknown` where that was never stored. */
  readonly signOff: SignedState | 'unknown';
  readonly changedAt: number;
  /** Lines of revisions from other tablets that went their own way. */
  readonly otherLines: number;
}

/** A deleted layout that can still be brought back. */
export interface DeletedRow extends LibraryRow {
  readonly removedAt: number;
}

/** What became of a library file. */
export interface LibraryImport {
  /** Names of layouts that were not here. */
  readonly added: readonly string[];
  /** Those that went on where this tablet was. */
  readonly wentOn: readonly string[];
  /** Those that went their own way on both tablets: both lines are kept. */
  readonly twoLines: readonly { readonly id: Id; readonly name: string }[];
  /** How many are the same here. */
  readonly same: number;
  readonly failed: readonly { readonly name: string; readonly why: string }[];
  readonly isCutOff: boolean;
  /** Layouts that the file says to hold, and how many could be read of it. */
  readonly promised: number;
  readonly read: number;
  /** Points in the history of layouts that could not be read. */
  readonly damagedPoints: number;
}

/** What became of a library, with the name of its file. */
export type TakenLibrary = LibraryImport & { readonly file: string };

/** Whether the open layout is on the disk. `kept`: the browser promised not to clear it by itself. */
export type SaveState =
  | { readonly kind: 'saved'; readonly at: number }
  | { readonly kind: 'saving' }
  /**
   * Storage refused: what it said. The work can still be exported. `insecure`: it was stored, but the browser promises nothing to
   * an address like this one.
   */
  | {
      readonly kind: 'failed';
      readonly reason: 'quota' | 'unavailable' | 'insecure' | 'other';
      readonly detail: string;
    }
  /** Another tab changed the same layout: nothing of either is lost until one is chosen. */
  | { readonly kind: 'conflict' };

/** Whether all that is saved stands in a second place too, beside the browser's database. */
export type CopyState =
  | { readonly kind: 'checking' }
  | { readonly kind: 'kept' }
  | { readonly kind: 'missing'; readonly why: string };

/** What the browser had lost and what became of it, by the layouts' names. */
export interface Restored {
  readonly names: readonly string[];
  readonly failed: readonly { readonly name: string; readonly why: string }[];
}

/** What a file offered for import turned out to be. */
export type ImportOutcome =
  | { readonly ok: true; readonly id: Id }
  | {
      readonly ok: false;
      readonly problems: readonly { readonly path: string; readonly message: string }[];
    };

/** One revision of the open layout. Times are milliseconds since 1970. */
export interface HistoryRow {
  readonly revision: number;
  readonly at: number;
  /** Empty when nobody named it. */
  readonly name: string;
  /** Who signed it off; null when no new sign-off came with it. */
  readonly signed: string | null;
  /** Who was asked and did not agree; null when nobody was, or agreed. */
  readonly withheld: string | null;
  /** `holds`: what is open now; `aside`: the last one of another tablet's line. */
  readonly tip: 'holds' | 'aside' | null;
}

/** What screens ask of the history of the open layout. */
export interface HistoryActions {
  /** Saves what is open, and tells every revision, the last one first. */
  list(): Promise<readonly HistoryRow[]>;
  /** A revision as it was. */
  read(revision: number): Promise<Layout>;
  /** Gives a revision a name; the empty one takes it away. */
  name(revision: number, name: string): Promise<void>;
  /** Another tablet's line is dealt with; its revisions stay. */
  settle(revision: number): Promise<void>;
}

/** What screens ask of the library. The app connects it to storage; screens never touch storage themselves. */
export interface LibraryActions {
  /** Opens a stored layout in the session. */
  open(id: Id): Promise<void>;
  /** Stores a new layout and opens it. */
  create(layout: Layout): Promise<void>;
  /** Stores a layout that was started from the open one and opens it; its origin gets the stored revision of that. */
  startNext(layout: Layout): Promise<void>;
  duplicate(id: Id): Promise<void>;
  rename(id: Id, name: string): Promise<void>;
  /** Removes a layout; `restore` brings it back for 30 days. */
  remove(id: Id): Promise<void>;
  restore(id: Id): Promise<void>;
  /** Leaves the open layout, saved, and shows the list. */
  close(): Promise<void>;
  /** Downloads a layout as a JSON file; the open one when no id is given, which works without storage too. */
  exportFile(id?: Id): Promise<void>;
  /** Downloads a table of the open layout, given as CSV; `table` becomes part of the file's name. */
  exportTable(table: string, csv: string): Promise<void>;
  /** Hands out a sheet of the open layout; `what` becomes part of the file's name. */
  exportSheet(
    what: string,
    format: 'pdf' | 'svg' | 'png' | 'dxf',
    content: string | Uint8Array<ArrayBuffer>,
  ): Promise<void>;
  importFile(file: {
    readonly name: string;
    readonly size: number;
    text(): Promise<string>;
  }): Promise<ImportOutcome>;
  /** Every player of the other stored layouts, each once, the last changed layout's first. What can't be read is left out. */
  players(): Promise<readonly Player[]>;
  /** After a conflict: keep this tab's work as a copy of its own, or take the other tab's. */
  resolveConflict(choice: 'keep-mine-as-copy' | 'take-theirs'): Promise<void>;
  mark(id: Id, marks: Partial<LibraryMarks>): Promise<void>;
  /** Deleted layouts that can be brought back, the last deleted first. */
  deleted(): Promise<readonly DeletedRow[]>;
  /** Downloads every layout with its history as one file. */
  exportLibrary(): Promise<void>;
  /** Whether a file is a whole library and not one layout. */
  isLibrary(file: File): Promise<boolean>;
  /** Takes a whole library in; nothing that is here is changed. How far it is and what became of it stand in the session. */
  importLibrary(file: File): Promise<void>;
  readonly history: HistoryActions;
  /** Asks the browser to keep the data; its answer. */
  askToKeep(): Promise<boolean>;
  /** Saves what is open now. Rejects when it can't be stored. */
  saveNow(): Promise<void>;
  /** Saves, then lets the waiting new version take over. */
  applyUpdate(): Promise<void>;
}
