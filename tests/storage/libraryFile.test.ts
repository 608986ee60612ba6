import { describe, expect, it } from 'vitest';
import {
  isLibraryFile,
  libraryFile,
  MOST_FILE_BYTES,
  NoLibrary,
  takeInLibrary,
} from '../../src/storage/libraryFile.ts';
import { memoryStorage } from '../../src/storage/memory.ts';
import { NOTHING_STORED } from '../../src/storage/port.ts';
import { layoutRecords } from '../../src/storage/records/layoutRecords.ts';
import { joined, recordBytes } from '../../src/storage/records/record.ts';
import type { FullStorage } from '../../src/storage/shelved.ts';
import { sample } from './sample.ts';

/** A tablet with layouts, each of two revisions. */
async function tablet(ids: readonly string[], start = 1000): Promise<FullStorage> {
  let time = start;
  const storage = memoryStorage(() => time++);
  for (const id of ids) {
    await storage.save(sample(id, `First ${id}`), NOTHING_STORED);
    await storage.save(sample(id, `Layout ${id}`), 1);
  }
  return storage;
}

const offered = (bytes: Uint8Array, name = 'all.layouts') => ({
  name,
  size: bytes.length,
  slice: (from: number, to: number) => ({
    arrayBuffer: async () => Uint8Array.from(bytes.subarray(from, to)).buffer,
  }),
});
const nothing = new Uint8Array();
const bytesOf = async (from: FullStorage) => joined((await libraryFile(from, 0)).parts);
const take = (on: FullStorage, bytes: Uint8Array) => takeInLibrary(on, offered(bytes), () => {});
const names = async (on: FullStorage) => (await on.list()).rows.map(({ name }) => name).sort();

describe('a library file', () => {
  it('B1 brings everything to an empty tablet: histories, marks and what was deleted', async () => {
    const first = await tablet(['one', 'two', 'gone']);
    await first.mark('one', { favourite: true, tags: ['tour'] });
    await first.nameRevision('two', 1, 'Sound check');
    await first.remove('gone');
    const file = await libraryFile(first, Date.UTC(2026, 6, 11));
    expect(file.name).toBe('Strokespace 2026-07-11.layouts');
    const second = await tablet([]);
    const read = await take(second, joined(file.parts));
    expect(read).toMatchObject({ isCutOff: false, promised: 3, damagedBytes: 0 });
    expect(read.layouts.map((one) => one.ok && one.kind)).toEqual(['new', 'new', 'new']);
    expect(await second.list()).toEqual(await first.list());
    expect(await second.removed()).toEqual(await first.removed());
    for (const id of ['one', 'two', 'gone']) {
      expect(await second.revisions(id)).toEqual(await first.revisions(id));
    }
  });

  it('B3 the same again changes nothing; a line that went on goes on; two lines stay two', async () => {
    const first = await tablet(['one', 'two', 'three']);
    const second = await tablet([], 9_000_000);
    await take(second, await bytesOf(first));
    await first.save(sample('two', 'Went on'), 2);
    await first.save(sample('three', 'Here'), 2);
    await second.save(sample('three', 'There'), 2);
    const { layouts } = await take(second, await bytesOf(first));
    expect(layouts.map((one) => one.ok && `${one.id} ${one.kind}`)).toEqual([
      'one nothing-new',
      'two went-on',
      'three two-lines',
    ]);
    expect(await names(second)).toEqual(['Layout one', 'There', 'Went on']);
  });

  it('B3 one bad layout among good ones is named, and the good ones come in', async () => {
    const first = await tablet(['one', 'two', 'three']);
    const whole = joined((await libraryFile(first, 0)).parts);
    const text = new TextDecoder('latin1').decode(whole);
    // Both texts of the second layout are damaged, its head is not.
    const bad = whole.slice();
    for (const at of [...text.matchAll(/"kind":"revision","id":"two"/g)].map(
      ({ index }) => index,
    )) {
      bad[at + 300] = (bad[at + 300] ?? 0) ^ 255;
    }
    const second = await tablet([]);
    const { layouts, damagedBytes } = await take(second, bad);
    expect(layouts).toMatchObject([
      { ok: true, name: 'Layout one' },
      { ok: false, name: 'Layout two', why: expect.stringContaining('missing or damaged') },
      { ok: true, name: 'Layout three' },
    ]);
    expect(damagedBytes).toBeGreaterThan(0);
    expect(await names(second)).toEqual(['Layout one', 'Layout three']);
  });

  it('B3 a layout that its own check refuses is named with its fault', async () => {
    const first = await tablet(['one', 'two']);
    const bytes = joined([
      recordBytes([{ meta: { kind: 'library', version: 1, madeAt: 0, layouts: 2 } }]),
      ...(await Promise.all(
        ['one', 'two'].map(async (id) => {
          const whole = await first.wholeLayout(id);
          const records = whole ? layoutRecords(whole) : [];
          // The texts of the second one are those of the first: whole, but not a layout with this id.
          const as = ({ meta, body }: (typeof records)[number]) => ({
            meta: 'id' in meta ? { ...meta, id: id === 'two' ? 'other' : id } : meta,
            body,
          });
          return recordBytes(records.map(as));
        }),
      )),
      recordBytes([{ meta: { kind: 'end', layouts: 2 } }]),
    ]);
    const second = await tablet([]);
    expect((await take(second, bytes)).layouts).toMatchObject([
      { ok: true, name: 'Layout one' },
      { ok: false, name: 'Layout two' },
    ]);
  });

  it('B4 what is cut off anywhere keeps what came before, and says so', async () => {
    const whole = await bytesOf(await tablet(['one', 'two', 'three', 'four']));
    for (const share of [0.2, 0.45, 0.7, 0.95, 0.999]) {
      const second = await tablet([]);
      const read = await take(second, whole.slice(0, Math.floor(whole.length * share)));
      expect(read).toMatchObject({ isCutOff: true, promised: 4 });
      const good = read.layouts.filter(({ ok }) => ok).length;
      expect(await names(second)).toHaveLength(good);
      expect(good).toBeGreaterThanOrEqual(Math.floor(share * 4) - 1);
    }
  });

  it('B4 says what is no library, newer or too large, and changes nothing', async () => {
    const second = await tablet(['mine']);
    await expect(take(second, new TextEncoder().encode('{"schema": 4}'))).rejects.toThrow(
      NoLibrary,
    );
    await expect(take(second, new Uint8Array())).rejects.toThrow('no library of this app');
    const newer = { kind: 'library', version: 2, madeAt: 0, layouts: 1 } as const;
    await expect(take(second, recordBytes([{ meta: newer }]))).rejects.toThrow('newer version');
    let read = false;
    const huge = {
      size: MOST_FILE_BYTES + 1,
      slice: () => {
        read = true;
        return { arrayBuffer: async () => new ArrayBuffer(0) };
      },
    };
    await expect(takeInLibrary(second, huge, () => {})).rejects.toThrow('at most 500 MB');
    expect(read).toBe(false);
    expect(await names(second)).toEqual(['Layout mine']);
  });

  it('B4 200 MB of something else are given up after the first piece', async () => {
    const second = await tablet(['mine']);
    let pieces = 0;
    const file = {
      size: 200_000_000,
      slice: (from: number, to: number) => {
        pieces += 1;
        return { arrayBuffer: async () => new ArrayBuffer(to - from) };
      },
    };
    await expect(takeInLibrary(second, file, () => {})).rejects.toThrow('no library of this app');
    expect(pieces).toBe(1);
    expect(await names(second)).toEqual(['Layout mine']);
  });

  it('B2 is read a megabyte at a time, and what was read is stored before the next is asked for', async () => {
    const [head = nothing, one = nothing, ...rest] = (
      await libraryFile(await tablet(['one', 'two']), 0)
    ).parts;
    // 3 MB that can't be read lie between the two layouts.
    const bytes = joined([head, one, new Uint8Array(3_000_000), ...rest]);
    const second = await tablet([]);
    const asked: number[] = [];
    const stored: number[] = [];
    let open = 0;
    const file = {
      size: bytes.length,
      slice: (from: number, to: number) => ({
        arrayBuffer: async () => {
          open += 1;
          expect(open).toBe(1);
          asked.push(to - from);
          stored.push((await names(second)).length);
          open -= 1;
          return Uint8Array.from(bytes.subarray(from, to)).buffer;
        },
      }),
    };
    const read = await takeInLibrary(second, file, () => {});
    expect(read.layouts.map(({ ok }) => ok)).toEqual([true, true]);
    expect(Math.max(...asked)).toBeLessThanOrEqual(2 ** 20);
    expect(asked.reduce((sum, length) => sum + length, 0)).toBe(bytes.length);
    expect(stored).toEqual([0, 1, 1]);
  });

  it('is known by its name or its first bytes', async () => {
    const bytes = await bytesOf(await tablet([]));
    expect(await isLibraryFile(offered(bytes, 'renamed.bin'))).toBe(true);
    expect(await isLibraryFile(offered(new Uint8Array(), 'Empty.LAYOUTS'))).toBe(true);
    expect(await isLibraryFile(offered(new TextEncoder().encode('{}'), 'one.json'))).toBe(false);
  });
});
