import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { connectTo, type Database, type ReadWrite } from './connection.ts';
import type { MarkOutcome, SaveOutcome, StorageChange, StoragePort, StoredRow } from './port.ts';
import { orRefusal } from './refusal.ts';
import { findBeforeSave, headOf, loaded, rowsOf, storedText } from './stored.ts';

/** Keeps layouts in the browser's IndexedDB. Tabs tell each other of changes over a channel with the database's name. */
export function indexedDbStorage(name: string, now: () => number): StoragePort {
  const watchers = new Set<(change: StorageChange) => void>();
  const tellHere = (change: StorageChange) => {
    for (const tell of watchers) tell(change);
  };
  const channel = channelNamed(name, tellHere);
  const connection = connectTo(name, (why) => tellHere({ kind: 'closed', why }));

  const mark = async (id: Id, removedAt: number | null): Promise<MarkOutcome> => {
    const outcome = await orRefusal(() =>
      connection.use((database) => setMark(database, id, removedAt)),
    );
    if (outcome.ok) channel?.postMessage({ kind: removedAt === null ? 'restored' : 'removed', id });
    return outcome;
  };

  return {
    async list() {
      const heads = await orRefusal(() => connection.use((database) => database.getAll('heads')));
      if ('ok' in heads) return { rows: [] as readonly StoredRow[], refusal: heads };
      return { rows: rowsOf(heads), refusal: null };
    },
    load: (id) => orRefusal(() => connection.use((database) => loadFrom(database, id))),
    async save(layout, expected) {
      const outcome = await orRefusal(async () => {
        const write = { layout, text: storedText(layout), expected, at: now() };
        return connection.use((database) => saveTo(database, write));
      });
      if (outcome.ok) channel?.postMessage({ kind: 'written', id: layout.id });
      return outcome;
    },
    remove: (id) => mark(id, now()),
    restore: (id) => mark(id, null),
    async forget(removedBefore) {
      return orRefusal(() =>
        connection.use(async (database) => {
          await forgetIn(database, removedBefore);
          return null;
        }),
      );
    },
    watch(tell) {
      watchers.add(tell);
      return () => watchers.delete(tell);
    },
    close() {
      watchers.clear();
      channel?.close();
      connection.close();
    },
  };
}

/** Strict: the browser answers only when the bytes are on the disk. Relaxed lost work in every power cut tried. */
function writing(database: Database): ReadWrite {
  const transaction = database.transaction(['heads', 'documents'], 'readwrite', {
    durability: 'strict',
  });
  // A failed request is answered where it was asked for, before anything waits for the end.
  transaction.done.catch(() => {});
  return transaction;
}

async function loadFrom(database: Database, id: Id) {
  const transaction = database.transaction(['heads', 'documents']);
  transaction.done.catch(() => {});
  const head = await transaction.objectStore('heads').get(id);
  const document = head && (await transaction.objectStore('documents').get([id, head.revision]));
  return loaded(head, document);
}

interface Write {
  readonly layout: Layout;
  readonly text: string;
  readonly expected: number;
  readonly at: number;
}

/** Rules S1, S2 and S7. */
async function saveTo(database: Database, write: Write): Promise<SaveOutcome> {
  const { layout, text, expected, at } = write;
  const { id } = layout;
  const transaction = writing(database);
  const heads = transaction.objectStore('heads');
  const documents = transaction.objectStore('documents');
  const head = await heads.get(id);
  const document = head && (await documents.get([id, head.revision]));
  const found = findBeforeSave(head, document?.text, { expected, text });
  if (found === 'same' && head) return { ok: true, revision: head.revision, at: head.changedAt };
  if (found !== 'fits') return { ok: false, kind: 'conflict' };
  const revision = expected + 1;
  await committed(transaction, [
    () => documents.add({ id, revision, parent: expected, at, text }),
    () => heads.put(headOf(layout, revision, at)),
    () => documents.delete([id, expected]),
  ]);
  return { ok: true, revision, at };
}

/** Rule S4. */
async function setMark(database: Database, id: Id, removedAt: number | null): Promise<MarkOutcome> {
  const transaction = writing(database);
  const heads = transaction.objectStore('heads');
  const head = await heads.get(id);
  if (head === undefined) return { ok: false, kind: 'missing' };
  await committed(transaction, [() => heads.put({ ...head, removedAt })]);
  return { ok: true };
}

async function forgetIn(database: Database, removedBefore: number): Promise<void> {
  const transaction = writing(database);
  const heads = transaction.objectStore('heads');
  const documents = transaction.objectStore('documents');
  const old = (await heads.getAll()).filter(
    ({ removedAt }) => removedAt !== null && removedAt < removedBefore,
  );
  const all = ({ id }: { id: Id }) => IDBKeyRange.bound([id], [id, Number.POSITIVE_INFINITY]);
  await committed(
    transaction,
    old.flatMap((head) => [() => heads.delete(head.id), () => documents.delete(all(head))]),
  );
}

/** Ends a write, once all of it is on the disk. Whatever fails takes all of it back. */
async function committed(
  transaction: ReadWrite,
  requests: readonly (() => Promise<unknown>)[],
): Promise<void> {
  try {
    await Promise.all([...requests.map(async (request) => request()), transaction.done]);
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    throw error;
  }
}

function channelNamed(
  name: string,
  hear: (change: StorageChange) => void,
): BroadcastChannel | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  const channel = new BroadcastChannel(name);
  channel.onmessage = (event: MessageEvent<StorageChange>) => hear(event.data);
  return channel;
}
