import { describe, expect, it, vi } from 'vitest';
import { appendTo, checkAgainst, gatherFrom } from '../../src/storage/journal/journal.ts';
import type { SecondCopy } from '../../src/storage/journal/secondCopy.ts';
import { type CopyState, journaled, type Restored } from '../../src/storage/journaled.ts';
import { emptyShelf, type MemoryShelf, memoryStorage } from '../../src/storage/memory.ts';
import { NOTHING_STORED } from '../../src/storage/port.ts';
import { storageContract } from './contract.ts';
import { memoryFile } from './journal/memoryFile.ts';
import { sample } from './sample.ts';

/** The journal's files, and a copy that works on them at once, or fails as it is told. */
function disk() {
  let files = [memoryFile()];
  let failing: string | null = null;
  const all = () => files.map(({ file }) => file);
  const unless = async <T>(work: () => T): Promise<T> => {
    if (failing !== null) throw new Error(failing);
    return work();
  };
  const newest = () => {
    const last = files.at(-1);
    if (last === undefined) throw new Error('no file');
    return last.file;
  };
  const copy: SecondCopy = {
    check: (heads) => unless(() => checkAgainst(all(), heads)),
    append: (bytes) => unless(() => appendTo(newest(), bytes)),
    gather: (ids) => unless(() => gatherFrom(all(), ids)),
    startAnew: () => unless(() => void files.push(memoryFile())),
    dropOlder: () =>
      unless(() => {
        files = files.slice(-1);
      }),
  };
  return {
    copy,
    count: () => files.length,
    size: () => all().reduce((sum, file) => sum + file.size(), 0),
    fail: (why: string | null) => {
      failing = why;
    },
    fill: (bytes: number) => {
      const { file } = files[0] ?? memoryFile();
      file.write(new Uint8Array(bytes), file.size());
    },
  };
}

/** A start of the app on a shelf and a disk. */
function started(on: ReturnType<typeof disk>, shelf: MemoryShelf, now = () => time++) {
  const states: CopyState[] = [];
  const restored: Restored[] = [];
  const storage = journaled(memoryStorage(now, shelf), on.copy, {
    startsAfter: 0,
    onState: (state) => states.push(state),
    onRestored: (what) => restored.push(what),
  });
  return { storage, restored, state: () => states.at(-1), states };
}
let time = 1000;
/** For what goes on behind, on a machine that is busy. */
const PATIENT = { timeout: 30_000 };

storageContract('with a second copy', () => {
  const [on, shelf] = [disk(), emptyShelf()];
  let full = false;
  let clock = 1000;
  const now = () => {
    if (full) {
      full = false;
      throw new DOMException('no room', 'QuotaExceededError');
    }
    return clock++;
  };
  return {
    open: () => started(on, shelf, now).storage,
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

describe('journaled', () => {
  it('K1 K3 what the database lost comes back with its history and marks, and is told', async () => {
    const on = disk();
    const first = started(on, emptyShelf());
    await first.storage.save(sample('one', 'A1'), NOTHING_STORED);
    await first.storage.save(sample('one', 'A2'), 1);
    await first.storage.nameRevision('one', 1, 'Sound check');
    await first.storage.mark('one', { favourite: true, tags: ['tour'] });
    await first.storage.save(sample('two', 'Deleted'), NOTHING_STORED);
    await first.storage.remove('two');
    expect(first.state()).toEqual({ kind: 'kept' });
    const second = started(on, emptyShelf());
    expect(await second.storage.list()).toEqual(await first.storage.list());
    expect(await second.storage.revisions('one')).toEqual(await first.storage.revisions('one'));
    expect(await second.storage.removed()).toEqual(await first.storage.removed());
    expect(second.restored).toEqual([{ names: ['A2'], failed: [] }]);
    const third = started(on, emptyShelf());
    expect(await third.storage.load('one')).toMatchObject({ ok: true, layout: { name: 'A2' } });
  });

  it('K3 a database that fell behind goes on where the journal is', async () => {
    const on = disk();
    const shelf = emptyShelf();
    const { storage } = started(on, shelf);
    await storage.save(sample('one', 'A1'), NOTHING_STORED);
    const old = { ...shelf, heads: new Map(shelf.heads) };
    const early = {
      ...old,
      revisions: new Map(shelf.revisions),
      documents: new Map(shelf.documents),
    };
    await storage.save(sample('one', 'A2'), 1);
    const again = started(on, early);
    // A save waits for the check, and so meets what came back.
    expect(await again.storage.save(sample('one', 'Late'), 1)).toMatchObject({ kind: 'conflict' });
    expect(again.restored).toEqual([{ names: ['A2'], failed: [] }]);
    expect(await again.storage.load('one')).toMatchObject({ layout: { name: 'A2' }, revision: 2 });
  });

  it('K3 what was stored before there was a journal is added to it', async () => {
    const [on, shelf] = [disk(), emptyShelf()];
    const before = memoryStorage(() => time++, shelf);
    await before.save(sample('one', 'Old'), NOTHING_STORED);
    const { storage, restored } = started(on, shelf);
    await storage.save(sample('two'), NOTHING_STORED);
    expect(restored).toEqual([]);
    await vi.waitFor(async () => {
      const again = started(on, emptyShelf());
      expect((await again.storage.list()).rows).toHaveLength(2);
    }, PATIENT);
  });

  it('K1 K4 a journal that fails keeps nobody from saving, and gets it later', async () => {
    const [on, shelf] = [disk(), emptyShelf()];
    const { storage, state } = started(on, shelf);
    await storage.save(sample('one', 'A1'), NOTHING_STORED);
    on.fail('the disk is full');
    expect(await storage.save(sample('one', 'A2'), 1)).toMatchObject({ ok: true, revision: 2 });
    expect(state()).toEqual({ kind: 'missing', why: 'the disk is full' });
    on.fail(null);
    await storage.save(sample('two'), NOTHING_STORED);
    expect(state()).toEqual({ kind: 'kept' });
    const again = started(on, emptyShelf());
    expect(await again.storage.load('one')).toMatchObject({ layout: { name: 'A2' } });
  });

  it('K2 where there is no journal the app goes on, and says that there is one copy', async () => {
    const on = disk();
    on.fail('this browser gives pages no files of their own');
    const { storage, state } = started(on, emptyShelf());
    expect((await storage.list()).rows).toEqual([]);
    expect(await storage.save(sample('one'), NOTHING_STORED)).toMatchObject({ ok: true });
    expect(state()).toEqual({
      kind: 'missing',
      why: 'this browser gives pages no files of their own',
    });
  });

  it('what was given up for ever does not come back', async () => {
    const on = disk();
    const { storage } = started(on, emptyShelf());
    await storage.save(sample('one'), NOTHING_STORED);
    await storage.remove('one');
    expect(await storage.forget(Number.POSITIVE_INFINITY)).toBeNull();
    const again = started(on, emptyShelf());
    expect((await again.storage.list()).rows).toEqual([]);
    expect(again.restored).toEqual([]);
  });

  it('K5 a journal that has grown is written anew, and the old one goes at the next start', async () => {
    const [on, shelf] = [disk(), emptyShelf()];
    const { storage } = started(on, shelf);
    await storage.save(sample('one', 'A1'), NOTHING_STORED);
    on.fill(40_000_000);
    const second = started(on, shelf);
    await second.storage.save(sample('one', 'A2'), 1);
    await vi.waitFor(() => expect(on.count()).toBe(2), PATIENT);
    await vi.waitFor(async () => {
      const third = started(on, shelf);
      await third.storage.save(sample('three'), NOTHING_STORED);
      expect(on.count()).toBe(1);
    }, PATIENT);
    expect(on.size()).toBeLessThan(100_000);
    const last = started(on, emptyShelf());
    expect(await last.storage.load('one')).toMatchObject({ layout: { name: 'A2' } });
  });
});
