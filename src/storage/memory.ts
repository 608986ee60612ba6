import type { Id } from '../layout/fields.ts';
import type { StorageChange } from './port.ts';
import type { Shelf, ShelfTurn } from './shelf.ts';
import { type Channel, type FullStorage, shelvedStorage } from './shelved.ts';
import type { StoredDocument, StoredHead, StoredRevision } from './stored.ts';

/** What ports in memory share, as tabs share a database. Revisions and documents by `id/revision`. */
export interface MemoryShelf {
  readonly heads: Map<Id, StoredHead>;
  readonly revisions: Map<string, StoredRevision>;
  readonly documents: Map<string, StoredDocument>;
  readonly watchers: Map<Channel, (change: StorageChange) => void>;
  /** The turn that is on. */
  turn: Promise<unknown>;
}

export const emptyShelf = (): MemoryShelf => ({
  heads: new Map(),
  revisions: new Map(),
  documents: new Map(),
  watchers: new Map(),
  turn: Promise.resolve(),
});

/** Keeps layouts while the page is open, and no longer. */
export function memoryStorage(now: () => number, shared = emptyShelf()): FullStorage {
  const channel: Channel = {
    tell(change) {
      for (const [owner, hear] of shared.watchers) {
        if (owner !== channel) queueMicrotask(() => hear(change));
      }
    },
    listen: (hear) => void shared.watchers.set(channel, hear),
    close() {},
  };
  return shelvedStorage(shelfOf(shared), channel, now);
}

function shelfOf(shared: MemoryShelf): Shelf {
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const run = shared.turn.then(work);
    shared.turn = run.catch(() => {});
    return run;
  };
  return {
    read: (work) => inTurn(() => work(turnOn(shared, []))),
    write: (work) =>
      inTurn(async () => {
        const changes: (() => void)[] = [];
        const answer = await work(turnOn(shared, changes));
        for (const change of changes) change();
        return answer;
      }),
    close() {},
  };
}

/** @param changes Gets what is written; whoever gave it carries it out. */
function turnOn(shared: MemoryShelf, changes: (() => void)[]): ShelfTurn {
  const { heads, revisions, documents } = shared;
  const key = (id: Id, revision: number) => `${id}/${revision}`;
  const of = <T extends { readonly id: Id; readonly revision: number }>(
    all: Map<string, T>,
    id: Id,
  ) => [...all.values()].filter((one) => one.id === id).sort((a, b) => a.revision - b.revision);
  const dropOne = (id: Id, revision: number) => {
    revisions.delete(key(id, revision));
    documents.delete(key(id, revision));
  };
  return {
    head: async (id) => heads.get(id),
    heads: async () => [...heads.values()],
    revision: async (id, revision) => revisions.get(key(id, revision)),
    revisions: async (id) => of(revisions, id),
    document: async (id, revision) => documents.get(key(id, revision)),
    documents: async (id) => of(documents, id),
    putHead: (head) => void changes.push(() => heads.set(head.id, head)),
    putRevision: (one) => void changes.push(() => revisions.set(key(one.id, one.revision), one)),
    addRevision: (one, document) =>
      void changes.push(() => {
        revisions.set(key(one.id, one.revision), one);
        documents.set(key(one.id, one.revision), document);
      }),
    dropRevision: (id, revision) => void changes.push(() => dropOne(id, revision)),
    drop: (id) =>
      void changes.push(() => {
        for (const { revision } of of(revisions, id)) dropOne(id, revision);
        heads.delete(id);
      }),
  };
}
