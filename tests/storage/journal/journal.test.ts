import { describe, expect, it } from 'vitest';
import {
  appendTo,
  checkAgainst,
  gatherFrom,
  type JournalFile,
} from '../../../src/storage/journal/journal.ts';
import { memoryStorage } from '../../../src/storage/memory.ts';
import { NOTHING_STORED } from '../../../src/storage/port.ts';
import { fromRecords, layoutRecords } from '../../../src/storage/records/layoutRecords.ts';
import { joined, recordBytes } from '../../../src/storage/records/record.ts';
import { sample } from '../sample.ts';
import { memoryFile } from './memoryFile.ts';

/** A storage with one layout of three revisions, and its records. */
async function stored(id = 'one') {
  let time = 1000;
  const storage = memoryStorage(() => time++);
  await storage.save(sample(id, 'A1'), NOTHING_STORED);
  await storage.save(sample(id, 'A2'), 1);
  await storage.save(sample(id, 'A3'), 2);
  const whole = await storage.wholeLayout(id);
  if (whole === undefined) throw new Error('expected the layout');
  const records = layoutRecords(whole);
  return { storage, whole, records, heads: await storage.heads() };
}

const check = (files: readonly JournalFile[], heads: Parameters<typeof checkAgainst>[1]) => {
  const { lost, behind } = checkAgainst(files, heads);
  return { lost, behind };
};

describe('the journal', () => {
  it('J1 J2 a crash in the middle of a write loses nothing that was answered', async () => {
    const { records, heads } = await stored();
    for (const share of [0, 0.3, 0.9, 1]) {
      const { file, crash, bytes, set } = memoryFile();
      appendTo(file, recordBytes(records));
      // A write that was never flushed.
      file.write(recordBytes([{ meta: { kind: 'forgotten', id: 'two' } }]), file.size());
      crash(share);
      expect(check([file], heads)).toEqual({ lost: [], behind: [] });
      // And what is appended behind the torn end is found.
      const torn = bytes().slice();
      set(torn);
      const other = await stored('other');
      appendTo(file, recordBytes(other.records));
      expect(check([file], [...heads, ...other.heads])).toEqual({ lost: [], behind: [] });
    }
  });

  it('J2 a full disk takes nothing, and says so', async () => {
    const { records, heads } = await stored();
    const whole = recordBytes(records);
    const { file } = memoryFile(whole.length + 30);
    appendTo(file, whole);
    expect(() => appendTo(file, whole)).toThrow('no room');
    expect(file.size()).toBe(whole.length);
    expect(check([file], heads)).toEqual({ lost: [], behind: [] });
  });

  it('J3 names what the database lost, and what the journal lacks', async () => {
    const { storage, whole, records, heads } = await stored();
    const { file } = memoryFile();
    expect(check([], heads)).toEqual({ lost: [], behind: ['one'] });
    appendTo(file, recordBytes(records));
    expect(check([file], [])).toEqual({ lost: ['one'], behind: [] });
    const second = whole.revisions[1]?.digest ?? '';
    expect(check([file], [{ id: 'one', digest: second }])).toEqual({ lost: ['one'], behind: [] });
    await storage.save(sample('one', 'A4'), 3);
    expect(check([file], await storage.heads())).toEqual({ lost: [], behind: ['one'] });
    appendTo(file, recordBytes([{ meta: { kind: 'forgotten', id: 'one' } }]));
    expect(check([file], [])).toEqual({ lost: [], behind: [] });
  });

  it('J4 older files count until a newer one is complete', async () => {
    const [one, two] = [await stored('one'), await stored('two')];
    const [older, newer] = [memoryFile(), memoryFile()];
    appendTo(older.file, recordBytes(joinedRecords(one.records, two.records)));
    appendTo(newer.file, recordBytes(one.records));
    const files = [older.file, newer.file];
    expect(checkAgainst(files, [])).toMatchObject({ lost: ['one', 'two'], isComplete: false });
    appendTo(newer.file, recordBytes([{ meta: { kind: 'complete' } }]));
    const answer = checkAgainst(files, one.heads);
    expect(answer).toMatchObject({ isComplete: true, size: older.file.size() + newer.file.size() });
    expect(answer.completeSize).toBeGreaterThan(0);
  });

  it('what is gathered is the layout with all its points and marks', async () => {
    const { storage, records } = await stored();
    const { file } = memoryFile();
    appendTo(file, joined([recordBytes(records), recordBytes((await stored('two')).records)]));
    await storage.mark('one', { favourite: true });
    const [gathered] = gatherFrom([file], ['one']);
    if (gathered === undefined) throw new Error('expected the layout');
    const from = fromRecords(gathered);
    if (!from.ok) throw new Error(from.why);
    const empty = memoryStorage(() => 9);
    expect(await empty.merge(from.incoming)).toMatchObject({ kind: 'new' });
    expect(await empty.revisions('one')).toEqual(await storage.revisions('one'));
    expect(await empty.load('one')).toEqual(await storage.load('one'));
  });

  it('a damaged point costs that point; when it held, the one before holds', async () => {
    const { whole, records } = await stored();
    const parts = records.map((one) => recordBytes([one]));
    const middle = (parts[0]?.length ?? 0) + 200;
    const last = (parts[0]?.length ?? 0) + (parts[1]?.length ?? 0) + 200;
    for (const [at, left, name] of [
      [middle, 2, 'A3'],
      [last, 2, 'A2'],
    ] as const) {
      const { file, set } = memoryFile();
      const bytes = recordBytes(records);
      bytes[at] = (bytes[at] ?? 0) ^ 255;
      set(bytes);
      const [gathered] = gatherFrom([file], ['one']);
      const from = gathered && fromRecords(gathered);
      expect(from).toMatchObject({ ok: true, incoming: { facts: { name } } });
      expect(from?.ok && from.incoming.revisions.length).toBe(left);
    }
    expect(whole.revisions).toHaveLength(3);
  });
});

const joinedRecords = <T>(...all: readonly (readonly T[])[]): readonly T[] => all.flat();
