import type { Id } from '../layout/fields.ts';
import { connectTo } from './connection.ts';
import type { Database, Stores, Transaction } from './database.ts';
import type { StorageChange } from './port.ts';
import type { Shelf, ShelfReads, ShelfTurn } from './shelf.ts';
import { type Channel, type FullStorage, shelvedStorage } from './shelved.ts';

const STORES: Stores = ['heads', 'revisions', 'documents'];

/** Keeps layouts in the browser's IndexedDB. Tabs tell each other of changes over a channel with the database's name. */
export function indexedDbStorage(name: string, now: () => number): FullStorage {
  const { channel, hear } = channelNamed(name);
  const connection = connectTo(name, (why) => hear({ kind: 'closed', why }));
  const shelf: Shelf = {
    read: (work) => connection.use((database) => reading(database, work)),
    write: (work) => connection.use((database) => writing(database, work)),
    close: () => connection.close(),
  };
  return shelvedStorage(shelf, channel, now);
}

async function reading<T>(database: Database, work: (turn: ShelfReads) => Promise<T>): Promise<T> {
  const transaction = database.transaction(STORES);
  transaction.done.catch(() => {});
  return work(readsOf(transaction));
}

/**
 * Strict: the browser answers only when the bytes are on the disk. Relaxed lost work in every power cut tried. Whatever fails takes
 * all of it back.
 */
async function writing<T>(database: Database, work: (turn: ShelfTurn) => Promise<T>): Promise<T> {
  const transaction = database.transaction(STORES, 'readwrite', { durability: 'strict' });
  // A failed request is answered where it was asked for, before anything waits for the end.
  transaction.done.catch(() => {});
  const pending: Promise<unknown>[] = [];
  const later = (request: () => Promise<unknown>) => {
    const answer = request();
    answer.catch(() => {});
    pending.push(answer);
  };
  try {
    const answer = await work({ ...readsOf(transaction), ...writesOf(transaction, later) });
    await Promise.all([...pending, transaction.done]);
    return answer;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    throw error;
  }
}

function readsOf(transaction: Transaction<'readonly' | 'readwrite'>): ShelfReads {
  const heads = transaction.objectStore('heads');
  const revisions = transaction.objectStore('revisions');
  const documents = transaction.objectStore('documents');
  return {
    head: (id) => heads.get(id),
    heads: () => heads.getAll(),
    revision: (id, revision) => revisions.get([id, revision]),
    revisions: (id) => revisions.getAll(allOf(id)),
    document: (id, revision) => documents.get([id, revision]),
    documents: (id) => documents.getAll(allOf(id)),
  };
}

function writesOf(
  transaction: Transaction<'readwrite'>,
  later: (request: () => Promise<unknown>) => void,
): Omit<ShelfTurn, keyof ShelfReads> {
  const heads = transaction.objectStore('heads');
  const revisions = transaction.objectStore('revisions');
  const documents = transaction.objectStore('documents');
  return {
    putHead: (head) => later(() => heads.put(head)),
    putRevision: (one) => later(() => revisions.put(one)),
    addRevision(one, document) {
      later(() => revisions.add(one));
      later(() => documents.add(document));
    },
    dropRevision(id, revision) {
      later(() => revisions.delete([id, revision]));
      later(() => documents.delete([id, revision]));
    },
    drop(id) {
      later(() => heads.delete(id));
      later(() => revisions.delete(allOf(id)));
      later(() => documents.delete(allOf(id)));
    },
  };
}

const allOf = (id: Id): IDBKeyRange => IDBKeyRange.bound([id], [id, Number.POSITIVE_INFINITY]);

/** `hear` gives a change to whoever listens here, as if another tab had told it. */
function channelNamed(name: string): { channel: Channel; hear: (change: StorageChange) => void } {
  let hear: (change: StorageChange) => void = () => {};
  const others = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  if (others) others.onmessage = ({ data }: MessageEvent<StorageChange>) => hear(data);
  const channel: Channel = {
    tell: (change) => others?.postMessage(change),
    listen: (listener) => {
      hear = listener;
    },
    close: () => others?.close(),
  };
  return { channel, hear: (change) => hear(change) };
}
