import { readFileSync } from 'node:fs';
import 'fake-indexeddb/auto';
import { forceCloseDatabase, IDBOpenDBRequest as NeverAnswering } from 'fake-indexeddb';
import { deleteDB, type IDBPDatabase, openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { addSignOff } from '../../src/layout/edit/signOffs.ts';
import { writeLayout } from '../../src/layout/read.ts';
import { indexedDbStorage } from '../../src/storage/indexedDb.ts';
import { NOTHING_STORED, type StorageChange, type StoragePort } from '../../src/storage/port.ts';
import type { FullStorage } from '../../src/storage/shelved.ts';
import { storageContract } from './contract.ts';
import { sample } from './sample.ts';

let count = 0;
const ports: StoragePort[] = [];

afterEach(() => {
  vi.restoreAllMocks();
  for (const port of ports.splice(0)) port.close();
});

/** Ports on a database of their own. */
function newDatabase() {
  const name = `layouts-${count++}`;
  let time = 1000;
  const open = (): FullStorage => {
    const port = indexedDbStorage(name, () => time++);
    ports.push(port);
    return port;
  };
  return { name, open };
}

/** Every connection that is opened from now on. */
function spyOnConnections(): IDBDatabase[] {
  const connections: IDBDatabase[] = [];
  const open = indexedDB.open.bind(indexedDB);
  vi.spyOn(indexedDB, 'open').mockImplementation((...given) => {
    const request = open(...given);
    request.addEventListener('success', () => connections.push(request.result));
    return request;
  });
  return connections;
}

/** A database as version 1 of it was made, still open. */
const firstDatabase = (name: string) =>
  openDB(name, 1, {
    upgrade(database) {
      database.createObjectStore('heads', { keyPath: 'id' });
      database.createObjectStore('documents', { keyPath: ['id', 'revision'] });
    },
  });

/** Stores a layout as version 1 did: one document, its text plain, and a head. */
async function storeAsFirst(
  database: IDBPDatabase,
  text: string,
  head: { readonly id: string; readonly revision: number; readonly removedAt: number | null },
): Promise<void> {
  const { id, revision } = head;
  const row = { name: 'Kept', venue: 'Cellar', pieces: 1, mics: 0, changedAt: 5000 };
  await database.put('heads', { ...head, ...row });
  await database.put('documents', { id, revision, parent: revision - 1, at: 5000, text });
}

describe('indexedDbStorage', () => {
  storageContract('IndexedDB', () => {
    const { name, open } = newDatabase();
    return {
      open,
      async damage(id, text) {
        const database = await openDB(name, 2);
        const document = (await database.getAll('documents')).findLast((found) => found.id === id);
        await database.put('documents', { ...document, text });
        database.close();
      },
      fillUp: () => {
        const put = IDBObjectStore.prototype.put;
        vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(function (
          this: IDBObjectStore,
          ...given
        ) {
          const request = put.apply(this, given);
          // Browsers abort at the end with this error; the stand-in database has only this way to do the same.
          const transaction = this.transaction as unknown as { _abort(error: string): void };
          request.addEventListener('success', () => transaction._abort('QuotaExceededError'));
          return request;
        });
      },
      async documents() {
        const database = await openDB(name, 2);
        const documents = await database.getAll('documents');
        database.close();
        return documents;
      },
    };
  });

  it('what was signed before its state was stored claims nothing, until it is saved again', async () => {
    const { name, open } = newDatabase();
    const storage = open();
    await storage.save(sample('plain'), NOTHING_STORED);
    const signed = addSignOff(sample('signed'), {
      ...{ name: 'Drummer', at: '2031-05-17T18:30:00Z', consent: true, answers: [], notes: '' },
    });
    await storage.save(signed, NOTHING_STORED);
    const database = await openDB(name, 2);
    for (const { signOff: _, ...head } of await database.getAll('heads')) {
      const signedAt = head.id === 'signed' ? '2031-05-17T18:30:00Z' : null;
      await database.put('heads', { ...head, signedAt });
    }
    database.close();
    const states = async () =>
      Object.fromEntries((await storage.list()).rows.map(({ id, signOff }) => [id, signOff]));
    expect(await states()).toEqual({ plain: 'none', signed: 'unknown' });
    await storage.save({ ...signed, name: 'Renamed' }, 1);
    expect(await states()).toEqual({ plain: 'none', signed: 'holds' });
  });

  it('a database of version 1 is brought over with all that it holds', async () => {
    const { name, open } = newDatabase();
    const old = await firstDatabase(name);
    const file = (path: string) => readFileSync(`tests/fixtures/layouts/${path}`, 'utf8');
    const [demo, signed] = [file('v1-large-kit.json'), file('v4-signed.json')];
    const [demoId, signedId] = [JSON.parse(demo).id, JSON.parse(signed).id];
    await storeAsFirst(old, demo, { id: demoId, revision: 7, removedAt: null });
    await storeAsFirst(old, signed, { id: signedId, revision: 1, removedAt: null });
    await storeAsFirst(old, '{"half of a', { id: 'broken', revision: 2, removedAt: null });
    await storeAsFirst(old, writeLayout(sample('gone')), {
      id: 'gone',
      revision: 3,
      removedAt: 6000,
    });
    old.close();
    const storage = open();
    const { rows, refusal } = await storage.list();
    expect(refusal).toBeNull();
    expect(rows.map(({ id }) => id).sort()).toEqual([demoId, signedId, 'broken'].sort());
    expect(rows.find(({ id }) => id === demoId)).toMatchObject({
      player: JSON.parse(demo).player.name,
      picture: expect.stringContaining(';'),
      changedAt: 5000,
      revision: 7,
    });
    expect(rows.find(({ id }) => id === signedId)?.signOff).toBe('holds');
    expect(await storage.load('broken')).toMatchObject({ kind: 'unreadable', text: '{"half of a' });
    expect(await storage.removed()).toMatchObject([{ id: 'gone', removedAt: 6000 }]);
    expect(await storage.revisions(demoId)).toMatchObject([
      { revision: 7, parent: 6, tip: 'holds' },
    ]);
    const there = await storage.load(demoId);
    if (!there.ok) throw new Error('expected the layout');
    const edited = { ...there.layout, name: 'Edited' };
    expect(await storage.save(edited, there.revision)).toMatchObject({ ok: true, revision: 8 });
    expect(await storage.loadRevision(demoId, 7)).toMatchObject({ ok: true, layout: there.layout });
    expect(await storage.wholeLayout(demoId)).toMatchObject({
      revisions: [{ revision: 7 }, { revision: 8 }],
    });
    expect(await storage.restore('gone')).toEqual({ ok: true });
    expect(await storage.load('gone')).toMatchObject({ ok: true, layout: sample('gone') });
  });

  it('S2 asks for strict durability in every write', async () => {
    const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const storage = newDatabase().open();
    await storage.save(sample('one'), NOTHING_STORED);
    await storage.remove('one');
    await storage.forget(Number.POSITIVE_INFINITY);
    const writes = asked.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes.map(([, , options]) => options)).toEqual([
      { durability: 'strict' },
      { durability: 'strict' },
      { durability: 'strict' },
    ]);
  });

  it('S2 a transaction that aborts at its end is not a save', async () => {
    const storage = newDatabase().open();
    await storage.save(sample('one'), NOTHING_STORED);
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(function (
      this: IDBObjectStore,
      ...given
    ) {
      const request = put.apply(this, given);
      request.addEventListener('success', () => this.transaction.abort());
      return request;
    });
    expect(await storage.save(sample('one', 'Lost'), 1)).toMatchObject({ kind: 'refused' });
    expect(await storage.load('one')).toMatchObject({
      revision: 1,
      layout: { name: 'Small club' },
    });
  });

  it('opens again after the browser took the connection away', async () => {
    const connections = spyOnConnections();
    const storage = newDatabase().open();
    const heard: StorageChange[] = [];
    storage.watch((change) => heard.push(change));
    await storage.save(sample('one'), NOTHING_STORED);
    for (const connection of connections) forceCloseDatabase(connection as never);
    await expect.poll(() => heard).toEqual([{ kind: 'closed', why: 'connection-lost' }]);
    expect(await storage.save(sample('one', 'After'), 1)).toMatchObject({ ok: true, revision: 2 });
    expect(connections).toHaveLength(2);
  });

  it('opens again when the connection closed without a word', async () => {
    const connections = spyOnConnections();
    const storage = newDatabase().open();
    await storage.save(sample('one'), NOTHING_STORED);
    for (const connection of connections) connection.close();
    expect(await storage.save(sample('one', 'After'), 1)).toMatchObject({ ok: true, revision: 2 });
    expect(connections).toHaveLength(2);
  });

  it('a write whose answer got lost is found done, not a conflict', async () => {
    const storage = newDatabase().open();
    await storage.save(sample('one'), NOTHING_STORED);
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(function (
      this: IDBObjectStore,
      ...given
    ) {
      put.apply(this, given);
      throw new DOMException('Connection lost', 'UnknownError');
    });
    expect(await storage.save(sample('one', 'After'), 1)).toMatchObject({ ok: true, revision: 2 });
    expect(await storage.load('one')).toMatchObject({ revision: 2, layout: { name: 'After' } });
  });

  it('gives way when all data are cleared, says so, and goes on in a new database', async () => {
    const { name, open } = newDatabase();
    const storage = open();
    const heard: StorageChange[] = [];
    storage.watch((change) => heard.push(change));
    await storage.save(sample('one'), NOTHING_STORED);
    await deleteDB(name);
    expect(heard).toEqual([{ kind: 'closed', why: 'cleared' }]);
    expect(await storage.revisions('one')).toEqual([]);
    expect(await storage.save(sample('one', 'Again'), NOTHING_STORED)).toMatchObject({ ok: true });
  });

  it('gives way to a newer version, says so, and does not write into it', async () => {
    const { name, open } = newDatabase();
    const storage = open();
    const heard: StorageChange[] = [];
    storage.watch((change) => heard.push(change));
    await storage.save(sample('one'), NOTHING_STORED);
    const newer = await openDB(name, 3);
    expect(heard).toEqual([{ kind: 'closed', why: 'newer-version' }]);
    expect(await storage.save(sample('one', 'Old tab'), 1)).toMatchObject({
      kind: 'refused',
      reason: 'unavailable',
      detail: expect.stringContaining('newer version'),
    });
    newer.close();
  });

  it('says that an older tab blocks it, and goes on when that tab is closed', async () => {
    const { name, open } = newDatabase();
    // An older version whose page does not listen for newer ones.
    const old = await firstDatabase(name);
    const storage = open();
    const refused = await storage.list();
    expect(refused).toMatchObject({ rows: [], refusal: { reason: 'unavailable' } });
    expect(refused.refusal?.detail).toContain('Close that tab');
    old.close();
    await expect.poll(async () => (await storage.list()).refusal).toBeNull();
  });

  it('an upgrade that fails leaves nothing half done', async () => {
    const { name, open } = newDatabase();
    const create = IDBDatabase.prototype.createObjectStore;
    vi.spyOn(IDBDatabase.prototype, 'createObjectStore').mockImplementation(function (
      this: IDBDatabase,
      store,
      options,
    ) {
      if (store === 'documents') throw new Error('no second store');
      return create.call(this, store, options);
    });
    const storage = open();
    expect(await storage.save(sample('one'), NOTHING_STORED)).toMatchObject({
      reason: 'unavailable',
      detail: 'no second store',
    });
    vi.restoreAllMocks();
    expect((await indexedDB.databases()).map((database) => database.name)).not.toContain(name);
    expect(await storage.save(sample('one'), NOTHING_STORED)).toMatchObject({ ok: true });
  });

  it('a browser without storage is a refusal, tried again with the next use', async () => {
    const storage = newDatabase().open();
    vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => {
      throw new DOMException('The user denied permission', 'SecurityError');
    });
    expect(await storage.save(sample('one'), NOTHING_STORED)).toEqual({
      ok: false,
      kind: 'refused',
      reason: 'unavailable',
      detail: 'The user denied permission',
    });
    expect(await storage.save(sample('one'), NOTHING_STORED)).toMatchObject({ ok: true });
  });

  it('a browser that never answers is a refusal, too', async () => {
    vi.useFakeTimers();
    const storage = newDatabase().open();
    vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => new NeverAnswering());
    const listing = storage.list();
    await vi.advanceTimersByTimeAsync(10_000);
    vi.useRealTimers();
    expect((await listing).refusal?.detail).toContain('did not open');
  });
});
