import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { SaveOutcome, StorageChange, StoragePort } from './port.ts';
import { orRefusal } from './refusal.ts';
import {
  findBeforeSave,
  headOf,
  loaded,
  rowsOf,
  type StoredDocument,
  type StoredHead,
  storedText,
} from './stored.ts';

/** What ports in memory share, as tabs share a database. */
export interface MemoryShelf {
  readonly heads: Map<Id, StoredHead>;
  readonly documents: Map<Id, StoredDocument>;
  readonly watchers: Map<(change: StorageChange) => void, StoragePort>;
}

export const emptyShelf = (): MemoryShelf => ({
  heads: new Map(),
  documents: new Map(),
  watchers: new Map(),
});

/** Keeps layouts while the page is open, and no longer. */
export function memoryStorage(now: () => number, shelf = emptyShelf()): StoragePort {
  const { heads, documents, watchers } = shelf;

  const tellOthers = (change: StorageChange): void => {
    for (const [tell, owner] of watchers) if (owner !== port) queueMicrotask(() => tell(change));
  };

  const mark = (id: Id, removedAt: number | null) => {
    const head = heads.get(id);
    if (head === undefined) return { ok: false, kind: 'missing' } as const;
    heads.set(id, { ...head, removedAt });
    tellOthers({ kind: removedAt === null ? 'restored' : 'removed', id });
    return { ok: true } as const;
  };

  const put = (layout: Layout, expected: number): SaveOutcome => {
    const { id } = layout;
    const text = storedText(layout);
    const head = heads.get(id);
    const found = findBeforeSave(head, documents.get(id)?.text, { expected, text });
    if (found === 'same' && head) return { ok: true, revision: head.revision, at: head.changedAt };
    if (found !== 'fits') return { ok: false, kind: 'conflict' };
    const [at, revision] = [now(), expected + 1];
    heads.set(id, headOf(layout, revision, at));
    documents.set(id, { id, revision, parent: expected, at, text });
    tellOthers({ kind: 'written', id });
    return { ok: true, revision, at };
  };

  const port: StoragePort = {
    list: async () => ({ rows: rowsOf(heads.values()), refusal: null }),
    load: async (id) => loaded(heads.get(id), documents.get(id)),
    save: (layout, expected) => orRefusal(async () => put(layout, expected)),
    remove: async (id) => mark(id, now()),
    restore: async (id) => mark(id, null),
    async forget(removedBefore) {
      for (const { id, removedAt } of heads.values()) {
        if (removedAt === null || removedAt >= removedBefore) continue;
        heads.delete(id);
        documents.delete(id);
      }
      return null;
    },
    watch(tell) {
      watchers.set(tell, port);
      return () => watchers.delete(tell);
    },
    close() {},
  };
  return port;
}
