import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import type { Id } from '../layout/fields.ts';
import type { StoredDocument, StoredHead, StoredRevision } from './stored.ts';

/** The database, version 2: a head per layout, what is known of its revisions, and their documents. */
export interface LayoutDatabase extends DBSchema {
  heads: { key: Id; value: StoredHead };
  revisions: { key: [Id, number]; value: StoredRevision };
  documents: { key: [Id, number]; value: StoredDocument };
}
export type Database = IDBPDatabase<LayoutDatabase>;
export type Stores = ['heads', 'revisions', 'documents'];
export type Transaction<M extends 'readonly' | 'readwrite'> = IDBPTransaction<
  LayoutDatabase,
  Stores,
  M
>;
