import { expect, it } from 'vitest';
import type { Unstored } from '../../src/app/autosave.ts';
import { leaveNotes } from '../../src/app/leaveNotes.ts';
import { sample } from '../storage/sample.ts';
import { box } from './box.ts';

const unstored: Unstored = { layout: sample('one', 'Left'), revision: 3 };

/** What a later page finds. */
async function found(storage: Storage, isStored = true): Promise<Unstored[]> {
  const taken: Unstored[] = [];
  await leaveNotes(() => storage, 'later').takeUp(async (note) => {
    taken.push(note);
    return isStored;
  });
  return taken;
}

it('the next start finds what was left, once', async () => {
  const storage = box();
  leaveNotes(() => storage, 'first').leave(unstored);
  leaveNotes(() => storage, 'second').leave({ ...unstored, revision: 0 });
  expect((await found(storage)).map(({ revision }) => revision).sort()).toEqual([0, 3]);
  expect(await found(storage)).toEqual([]);
});

it('what could not be stored then is found again', async () => {
  const storage = box();
  leaveNotes(() => storage, 'first').leave(unstored);
  expect(await found(storage, false)).toEqual([unstored]);
  expect(await found(storage)).toEqual([unstored]);
});

it('a page takes its own note back, and no other', async () => {
  const storage = box();
  const first = leaveNotes(() => storage, 'first');
  first.leave(unstored);
  leaveNotes(() => storage, 'second').leave(null);
  expect(storage.length).toBe(1);
  first.leave(null);
  expect(await found(storage)).toEqual([]);
});

it('what is no note is left where it is', async () => {
  const entries = {
    other: 'x',
    'strokespace.left.broken': '3\n{"half',
    'strokespace.left.odd': `-1\n${JSON.stringify(sample('one'))}`,
  };
  const storage = box(entries);
  expect(await found(storage)).toEqual([]);
  expect(storage.length).toBe(3);
});

it('a browser without storage leaves nothing and finds nothing', async () => {
  const notes = leaveNotes(() => {
    throw new DOMException('denied', 'SecurityError');
  }, 'first');
  notes.leave(unstored);
  await notes.takeUp(async () => {
    throw new Error('expected nothing to take up');
  });
});
