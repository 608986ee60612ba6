import { describe, expect, it } from 'vitest';
import { emptyShelf, memoryStorage } from '../../src/storage/memory.ts';
import { NOTHING_STORED, type StoragePort } from '../../src/storage/port.ts';
import { sheltered } from '../../src/storage/sheltered.ts';
import { storageContract } from './contract.ts';
import { refusingStorage } from './refusing.ts';
import { sample } from './sample.ts';

/** A storage that can be made to refuse, and what is really in it. */
function fickle() {
  const inside = memoryStorage(() => 1000);
  const refusing = refusingStorage('No storage today.');
  let broken = false;
  const switched = new Proxy(inside, {
    get: (_, key: keyof StoragePort) => (broken ? refusing : inside)[key],
  });
  const storage = sheltered(
    switched,
    memoryStorage(() => 2000),
  );
  return {
    inside,
    storage,
    breakDown: () => {
      broken = true;
    },
    repair: () => {
      broken = false;
    },
  };
}

describe('sheltered', () => {
  storageContract('without a shelter to go to', () => {
    const shelf = emptyShelf();
    let time = 1000;
    let full = false;
    const now = () => {
      if (full) {
        full = false;
        throw new DOMException('no room', 'QuotaExceededError');
      }
      return time++;
    };
    return {
      open: () => sheltered(memoryStorage(now, shelf), refusingStorage('no shelter')),
      async damage(id, text) {
        const [key, document] = [...shelf.documents].findLast(([, one]) => one.id === id) ?? [];
        if (key !== undefined && document) shelf.documents.set(key, { ...document, text });
      },
      fillUp: () => {
        full = true;
      },
      documents: async () => [...shelf.documents.values()],
    };
  });

  it('keeps what was refused, and still says that it was', async () => {
    const { inside, storage, breakDown } = fickle();
    await storage.save(sample('one', 'Kept'), NOTHING_STORED);
    expect(storage.held()).toEqual([]);
    breakDown();
    const refusal = {
      ok: false,
      kind: 'refused',
      reason: 'unavailable',
      detail: 'No storage today.',
    };
    expect(await storage.save(sample('two', 'New'), NOTHING_STORED)).toEqual(refusal);
    expect(await storage.save(sample('one', 'Changed'), 1)).toEqual(refusal);
    expect(storage.held()).toEqual(['two', 'one']);
    const { rows, refusal: said } = await storage.list();
    expect(said).toEqual(refusal);
    expect(rows.map(({ name }) => name).sort()).toEqual(['Changed', 'New']);
    expect(await storage.load('one')).toMatchObject({ layout: { name: 'Changed' }, revision: 1 });
    expect(await storage.load('two')).toMatchObject({
      layout: { name: 'New' },
      revision: NOTHING_STORED,
    });
    expect((await inside.list()).rows.map(({ name }) => name)).toEqual(['Kept']);
  });

  it('stores it when the storage takes it again', async () => {
    const { inside, storage, breakDown, repair } = fickle();
    await storage.save(sample('one'), NOTHING_STORED);
    breakDown();
    await storage.save(sample('one', 'Second'), 1);
    await storage.save(sample('one', 'Third'), 1);
    repair();
    expect(await storage.save(sample('one', 'Fourth'), 1)).toMatchObject({ ok: true, revision: 2 });
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Fourth' }, revision: 2 });
    expect((await storage.list()).rows).toHaveLength(1);
    expect(await storage.load('one')).toMatchObject({ layout: { name: 'Fourth' }, revision: 2 });
  });

  it('another tab’s change meanwhile is a conflict, and then that change is what is there', async () => {
    const { inside, storage, breakDown, repair } = fickle();
    await storage.save(sample('one'), NOTHING_STORED);
    breakDown();
    await storage.save(sample('one', 'Mine'), 1);
    await inside.save(sample('one', 'Theirs'), 1);
    repair();
    expect(await storage.save(sample('one', 'Mine'), 1)).toEqual({ ok: false, kind: 'conflict' });
    expect(await storage.load('one')).toMatchObject({ layout: { name: 'Theirs' }, revision: 2 });
  });

  it('offers all that it holds to the storage again', async () => {
    const { inside, storage, breakDown, repair } = fickle();
    await storage.save(sample('one'), NOTHING_STORED);
    breakDown();
    await storage.save(sample('one', 'Changed'), 1);
    await storage.save(sample('two', 'New'), NOTHING_STORED);
    await storage.offerAgain();
    expect(storage.held()).not.toEqual([]);
    repair();
    await storage.offerAgain();
    expect(storage.held()).toEqual([]);
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Changed' }, revision: 2 });
    expect(await inside.load('two')).toMatchObject({ layout: { name: 'New' }, revision: 1 });
  });

  it('what is only held is not given out as stored', async () => {
    const { storage, breakDown } = fickle();
    breakDown();
    await storage.save(sample('one'), NOTHING_STORED);
    expect(await storage.load('one')).toMatchObject({ ok: true, at: null });
  });

  it('what was never stored can be removed and restored', async () => {
    const { storage, breakDown } = fickle();
    breakDown();
    await storage.save(sample('new'), NOTHING_STORED);
    expect(await storage.remove('new')).toEqual({ ok: true });
    expect((await storage.list()).rows).toEqual([]);
    expect(await storage.restore('new')).toEqual({ ok: true });
    expect(await storage.load('new')).toMatchObject({ ok: true, layout: sample('new') });
  });
});
