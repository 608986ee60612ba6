import { describe, expect, it } from 'vitest';
import { memoryStorage } from '../../src/storage/memory.ts';
import type { IncomingLayout } from '../../src/storage/merge.ts';
import { NOTHING_STORED } from '../../src/storage/port.ts';
import type { FullStorage } from '../../src/storage/shelved.ts';
import { sample } from './sample.ts';

/** A tablet of its own, with a clock of its own. */
function tablet(start: number): FullStorage {
  let time = start;
  return memoryStorage(() => time++);
}

/** What a tablet hands out of a layout. */
async function handedOut(from: FullStorage, id: string): Promise<IncomingLayout> {
  await from.markShared([id]);
  const there = await from.wholeLayout(id);
  if (there === undefined) throw new Error('expected the layout');
  const { head, revisions } = there;
  return { ...head, facts: head, revisions };
}

/** Saves the layout as it is there under other names, one after the other. */
async function rename(on: FullStorage, names: readonly string[]): Promise<void> {
  for (const name of names) {
    const there = await on.load('one');
    if (!there.ok) throw new Error('expected the layout');
    await on.save({ ...there.layout, name }, there.revision);
  }
}

const nameOn = async (on: FullStorage): Promise<string | undefined> => {
  const there = await on.load('one');
  return there.ok ? there.layout.name : undefined;
};

/** Two tablets that both have the layout as it was handed from the first one to the second. */
async function pair() {
  const [first, second] = [tablet(1000), tablet(5_000_000)];
  await first.save(sample('one', 'A1'), NOTHING_STORED);
  await rename(first, ['A2']);
  await second.merge(await handedOut(first, 'one'));
  return { first, second };
}

describe('mergeInto', () => {
  it('a layout that is not here comes with its history and marks', async () => {
    const [first, second] = [tablet(1000), tablet(5_000_000)];
    await first.save(sample('one', 'A1'), NOTHING_STORED);
    await rename(first, ['A2', 'A1']);
    await first.mark('one', { favourite: true, tags: ['tour'] });
    await first.nameRevision('one', 2, 'Second');
    const outcome = await second.merge(await handedOut(first, 'one'));
    expect(outcome).toEqual({ kind: 'new', theirs: 3 });
    expect(await second.list()).toEqual(await first.list());
    expect(await second.revisions('one')).toEqual(await first.revisions('one'));
    expect(await nameOn(second)).toBe('A1');
  });

  it('what was there already changes nothing', async () => {
    const { first, second } = await pair();
    expect(await second.merge(await handedOut(first, 'one'))).toMatchObject({
      kind: 'nothing-new',
    });
    await rename(second, ['B3']);
    expect(await second.merge(await handedOut(first, 'one'))).toMatchObject({
      kind: 'nothing-new',
    });
    expect(await nameOn(second)).toBe('B3');
  });

  it('a line that went on over there goes on here', async () => {
    const { first, second } = await pair();
    await rename(first, ['A3', 'A4']);
    expect(await second.merge(await handedOut(first, 'one'))).toEqual({
      kind: 'went-on',
      theirs: 4,
    });
    expect(await nameOn(second)).toBe('A4');
    expect((await second.list()).rows).toMatchObject([{ name: 'A4', revision: 4, otherLines: 0 }]);
    await rename(second, ['B5']);
    expect(await first.merge(await handedOut(second, 'one'))).toMatchObject({ kind: 'went-on' });
    expect(await nameOn(first)).toBe('B5');
  });

  it('two that went their own way are two lines: nothing is lost, and work goes on', async () => {
    const { first, second } = await pair();
    await rename(first, ['A3']);
    await rename(second, ['B3', 'B4']);
    const outcome = await second.merge(await handedOut(first, 'one'));
    expect(outcome).toEqual({ kind: 'two-lines', theirs: 5 });
    expect(await nameOn(second)).toBe('B4');
    expect((await second.list()).rows).toMatchObject([{ name: 'B4', revision: 4, otherLines: 1 }]);
    expect(await second.loadRevision('one', 5)).toMatchObject({ layout: { name: 'A3' } });
    expect(await second.revisions('one')).toMatchObject([
      { revision: 1, parent: 0, tip: null },
      { revision: 2, parent: 1, tip: null },
      { revision: 3, parent: 2, tip: null },
      { revision: 4, parent: 3, tip: 'holds' },
      { revision: 5, parent: 2, tip: 'aside' },
    ]);
    await rename(second, ['B6']);
    expect(await second.loadRevision('one', 6)).toMatchObject({ layout: { name: 'B6' } });
    expect(await second.merge(await handedOut(first, 'one'))).toMatchObject({
      kind: 'nothing-new',
    });
    // Back on the first tablet it is the other way round: its own line holds.
    expect(await first.merge(await handedOut(second, 'one'))).toMatchObject({ kind: 'two-lines' });
    expect(await nameOn(first)).toBe('A3');
    const names = await first.revisions('one');
    expect('ok' in names ? 0 : names.length).toBe(6);
  });

  it('another line is there until it is settled, and its points stay', async () => {
    const { first, second } = await pair();
    await rename(first, ['A3']);
    await rename(second, ['B3']);
    await second.merge(await handedOut(first, 'one'));
    expect(await second.settleLine('one', 4)).toEqual({ ok: true });
    expect((await second.list()).rows).toMatchObject([{ otherLines: 0 }]);
    expect(await second.loadRevision('one', 4)).toMatchObject({ layout: { name: 'A3' } });
    expect(await second.settleLine('one', 4)).toMatchObject({ kind: 'missing' });
    expect(await second.merge(await handedOut(first, 'one'))).toMatchObject({
      kind: 'nothing-new',
    });
  });

  it('a line goes on also when the points between were thinned over there', async () => {
    const { first, second } = await pair();
    await rename(first, ['A3', 'A4', 'A5']);
    const { revisions, ...rest } = await handedOut(first, 'one');
    const thin = revisions.filter(({ shared, revision }) => shared || revision === rest.revision);
    expect(thin.map(({ revision }) => revision)).toEqual([2, 5]);
    expect(await second.merge({ ...rest, revisions: thin })).toMatchObject({ kind: 'went-on' });
    expect(await nameOn(second)).toBe('A5');
  });

  it('a name given on either side stays', async () => {
    const { first, second } = await pair();
    await first.nameRevision('one', 1, 'First here');
    await second.nameRevision('one', 2, 'Second there');
    await second.merge(await handedOut(first, 'one'));
    expect(await second.revisions('one')).toMatchObject([
      { name: 'First here' },
      { name: 'Second there' },
    ]);
  });

  it('what was removed here comes back; what is removed there stays here', async () => {
    const { first, second } = await pair();
    await second.remove('one');
    expect(await second.merge(await handedOut(first, 'one'))).toMatchObject({ kind: 'history' });
    expect(await nameOn(second)).toBe('A2');
    await first.remove('one');
    await second.merge(await handedOut(first, 'one'));
    expect(await nameOn(second)).toBe('A2');
  });

  it('a layout without the revision that holds is refused, and changes nothing', async () => {
    const { first, second } = await pair();
    const given = await handedOut(first, 'one');
    await expect(second.merge({ ...given, revision: 99 })).rejects.toThrow('holds');
    expect(await nameOn(second)).toBe('A2');
  });
});
