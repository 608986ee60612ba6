import type { Id } from '../layout/fields.ts';
import type { StoredDocument, StoredHead, StoredRevision } from './stored.ts';

/** What one turn on a shelf can read; everything is for this turn only. */
export interface ShelfReads {
  head(id: Id): Promise<StoredHead | undefined>;
  heads(): Promise<readonly StoredHead[]>;
  revision(id: Id, revision: number): Promise<StoredRevision | undefined>;
  /** All revisions of a layout, the first one first. */
  revisions(id: Id): Promise<readonly StoredRevision[]>;
  document(id: Id, revision: number): Promise<StoredDocument | undefined>;
  documents(id: Id): Promise<readonly StoredDocument[]>;
}

/** What a turn can write, too. */
export interface ShelfTurn extends ShelfReads {
  putHead(head: StoredHead): void;
  /** A revision that is there already, with another name or mark. */
  putRevision(revision: StoredRevision): void;
  /** A new revision with its text; there must be none with its number. */
  addRevision(revision: StoredRevision, document: StoredDocument): void;
  dropRevision(id: Id, revision: number): void;
  /** Gives up a layout with all its revisions. */
  drop(id: Id): void;
}

/** Where heads, revisions and their texts lie. Storage rules are written once, over this. */
export interface Shelf {
  /** Reads in one turn, in which nobody writes. */
  read<T>(work: (turn: ShelfReads) => Promise<T>): Promise<T>;
  /** Reads and writes in one turn: all of it holds once this resolves, or none of it. */
  write<T>(work: (turn: ShelfTurn) => Promise<T>): Promise<T>;
  close(): void;
}
