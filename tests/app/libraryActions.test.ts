import { afterEach, describe, expect, it, vi } from 'vitest';
import { Autosave } from '../../src/app/autosave.ts';
import { tasksInTurn } from '../../src/app/inTurn.ts';
import { libraryActions } from '../../src/app/libraryActions.ts';
import { Workbench } from '../../src/app/workbench.ts';
import type { Layout } from '../../src/layout/layout.ts';
import {
  beginGesture,
  edit,
  initialState,
  previewGesture,
  redo,
  session,
  undo,
} from '../../src/session/session.ts';
import type { SheetFile, TextFile } from '../../src/storage/files.ts';
import type { LibraryFile } from '../../src/storage/libraryFile.ts';
import { emptyShelf, memoryStorage } from '../../src/storage/memory.ts';
import { NOTHING_STORED, type StoragePort } from '../../src/storage/port.ts';
import { sheltered } from '../../src/storage/sheltered.ts';
import { refusingStorage } from '../storage/refusing.ts';
import { sample } from '../storage/sample.ts';

const rename = (name: string) => (layout: Layout) => ({ ...layout, name });
const open = () => session.getState().open?.layout;
const saving = () => session.getState().saving;
const rows = () => session.getState().library?.map(({ name }) => name);

let last: Autosave | undefined;
const onCleared = vi.fn();

afterEach(() => {
  last?.untrack();
  onCleared.mockReset();
  session.setState(initialState);
});

/** A tab of the app on a database that other tabs share, and that can break down. */
function tab(shelf = emptyShelf()) {
  const inside = memoryStorage(Date.now, shelf);
  let isBroken = false;
  const fickle = new Proxy(inside, {
    get: (_, key: keyof StoragePort) =>
      (isBroken ? refusingStorage('No storage today.') : inside)[key],
  });
  const storage = sheltered(fickle, memoryStorage(Date.now));
  const autosave = new Autosave({ storage, unreliable: null, onSaved: () => {}, onCleared });
  last = autosave;
  const workbench = new Workbench(storage, autosave);
  const files: TextFile[] = [];
  const sheets: SheetFile[] = [];
  const libraries: LibraryFile[] = [];
  const updates: string[] = [];
  let update: (() => Promise<void>) | null = null;
  const actions = libraryActions({
    storage,
    full: inside,
    autosave,
    workbench,
    handOut: async (file) => {
      if ('parts' in file) libraries.push(file);
      else if ('text' in file) files.push(file);
      else sheets.push(file);
    },
    askToKeep: async () => true,
    update: () => update,
    inTurn: tasksInTurn(),
  });
  return {
    actions,
    autosave,
    workbench,
    shelf,
    inside,
    files,
    sheets,
    libraries,
    updates,
    offerUpdate: () => {
      update = async () => {
        updates.push(open()?.name ?? 'nothing open');
      };
    },
    breakDown: () => {
      isBroken = true;
    },
    repair: () => {
      isBroken = false;
    },
    /** What another tab does: it reads what is stored, changes it and stores it. */
    async changeElsewhere(id: string, name: string) {
      const there = await inside.load(id);
      if (!there.ok) throw new Error('expected a layout');
      await inside.save({ ...there.layout, name }, there.revision);
    },
  };
}

const offered = (text: string) => ({ name: 'x.json', size: text.length, text: async () => text });

describe('the list', () => {
  it('create stores and opens', async () => {
    const { actions, inside } = tab();
    await actions.create(sample('one', 'First'));
    expect(open()?.name).toBe('First');
    expect(saving()?.kind).toBe('saved');
    expect(await inside.load('one')).toMatchObject({ ok: true, revision: 1 });
  });

  it.each(['close', 'open', 'create'] as const)(
    '%s in the middle of a drag takes the drag back',
    async (way) => {
      const { actions, inside } = tab();
      await actions.create(sample('two'));
      await actions.create(sample('one', 'Small club'));
      beginGesture('Move');
      previewGesture(rename('Half way'));
      await (way === 'create' ? actions.create(sample('three')) : actions[way]('two'));
      expect(session.getState().gesture).toBeNull();
      expect(await inside.load('one')).toMatchObject({ layout: { name: 'Small club' } });
      expect(open()?.id).toBe({ close: undefined, open: 'two', create: 'three' }[way]);
    },
  );

  it('close saves what is open and lists it', async () => {
    const { actions, inside } = tab();
    await actions.create(sample('one'));
    edit('Rename', rename('Changed'));
    await actions.close();
    expect(open()).toBeUndefined();
    expect(saving()).toBeNull();
    expect(rows()).toEqual(['Changed']);
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Changed' } });
  });

  it('opening another saves the one that was open', async () => {
    const { actions, inside } = tab();
    await inside.save(sample('two', 'Second'), NOTHING_STORED);
    await actions.create(sample('one'));
    edit('Rename', rename('Changed'));
    await actions.open('two');
    expect(open()?.name).toBe('Second');
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Changed' } });
  });

  it('two taps at once open both in turn, and the last stays', async () => {
    const { actions, inside } = tab();
    await inside.save(sample('one', 'First'), NOTHING_STORED);
    await inside.save(sample('two', 'Second'), NOTHING_STORED);
    await Promise.all([actions.open('one'), actions.open('two'), actions.open('two')]);
    expect(open()?.name).toBe('Second');
  });

  it('startNext saves what is open, opens the next layout, and tells it which revision it came from', async () => {
    const { actions, inside } = tab();
    await actions.create(sample('one', 'Club'));
    edit('Rename', rename('Club 2'));
    const from = open();
    if (!from) throw new Error('one is open');
    const { name, venue, deck, box, cabling } = from;
    const origin = { layout: 'one', revision: null, name, venue, deck, box, cabling };
    await actions.startNext({ ...from, id: 'next', name: 'Barn', origin });
    expect(open()).toMatchObject({ id: 'next', name: 'Barn' });
    const there = await inside.load('one');
    expect(there).toMatchObject({ ok: true, layout: { name: 'Club 2' } });
    expect(open()?.origin).toEqual({ ...origin, revision: there.ok ? there.revision : 0 });
  });

  it('duplicate makes a layout of its own, of what is open as it is now too', async () => {
    const { actions, inside } = tab();
    await actions.create(sample('one', 'Club'));
    edit('Rename', rename('Club 2'));
    await actions.duplicate('one');
    await actions.close();
    expect(rows()?.sort()).toEqual(['Club 2', 'Club 2 (copy)']);
    const ids = (await inside.list()).rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(2);
  });

  it('rename bounds the name, needs one, and can be undone while the layout is open', async () => {
    const { actions, inside } = tab();
    await actions.create(sample('one'));
    await actions.rename('one', '  Hall  ');
    expect(open()?.name).toBe('Hall');
    expect(session.getState().history.past.at(-1)?.label).toBe('Rename');
    await actions.close();
    await actions.rename('one', 'x'.repeat(100));
    expect(rows()).toEqual(['x'.repeat(80)]);
    await expect(actions.rename('one', '   ')).rejects.toThrow('a name is needed');
    expect(await inside.load('one')).toMatchObject({ ok: true });
  });

  it('remove and restore, of the open one as well', async () => {
    const { actions } = tab();
    await actions.create(sample('one', 'Keep'));
    edit('Rename', rename('Keep me'));
    await actions.remove('one');
    expect(open()).toBeUndefined();
    expect(rows()).toEqual([]);
    await actions.restore('one');
    expect(rows()).toEqual(['Keep me']);
    await expect(actions.restore('none')).rejects.toThrow('not here any more');
  });
});

describe('files', () => {
  it('exports what is open as it is this moment', async () => {
    const { actions, files } = tab();
    await actions.create(sample('one', 'Club'));
    edit('Rename', rename('Now'));
    await actions.exportFile();
    expect(files.map(({ name }) => name)).toEqual(['Now.json']);
    expect(JSON.parse(files[0]?.text ?? '')).toEqual(sample('one', 'Now'));
  });

  it('import adds a new layout and opens nothing', async () => {
    const { actions, files, inside } = tab();
    await actions.create(sample('one', 'Club'));
    await actions.exportFile();
    await actions.close();
    const outcome = await actions.importFile(offered(files[0]?.text ?? ''));
    expect(outcome.ok && outcome.id).not.toBe('one');
    expect(open()).toBeUndefined();
    // Beside the one that has its name it is told apart, as a copy is; all else is as in the file.
    expect(rows()?.toSorted()).toEqual(['Club', 'Club (copy)']);
    const there = await inside.load(outcome.ok ? outcome.id : '');
    expect(there.ok && { ...there.layout, id: 'one', name: 'Club' }).toEqual(sample('one', 'Club'));
    await actions.importFile(offered(files[0]?.text ?? ''));
    expect(rows()?.toSorted()).toEqual(['Club', 'Club (copy 2)', 'Club (copy)']);
  });

  it('a bad file names path and what was expected, and changes nothing', async () => {
    const { actions, inside } = tab();
    const bad = JSON.stringify({ ...sample('one'), margin: 'wide', extra: 1 });
    const outcome = await actions.importFile(offered(bad));
    expect(outcome.ok).toBe(false);
    const paths = outcome.ok ? [] : outcome.problems.map(({ path }) => path).sort();
    expect(paths).toEqual(['extra', 'margin']);
    expect(outcome).toMatchObject({
      problems: [{ message: expect.stringMatching(/^expected .+, found /) }, {}],
    });
    expect((await inside.list()).rows).toEqual([]);
  });

  it('a stored document that can’t be read is named on opening, and exported to the letter', async () => {
    const { actions, files, shelf, inside } = tab();
    await inside.save(sample('one', 'Festival'), NOTHING_STORED);
    const document = shelf.documents.get('one/1');
    if (document) shelf.documents.set('one/1', { ...document, text: '{"half":' });
    await expect(actions.open('one')).rejects.toThrow("“Festival” can't be read (expected JSON");
    await actions.exportFile('one');
    expect(files).toEqual([{ name: 'Festival.json', text: '{"half":' }]);
  });
});

describe('another tab', () => {
  it('its change is taken over where nothing is unsaved', async () => {
    const { actions, autosave, workbench, changeElsewhere } = tab();
    await actions.create(sample('one', 'Mine'));
    await changeElsewhere('one', 'Theirs');
    await workbench.lookForOthersChange();
    expect(open()?.name).toBe('Theirs');
    edit('Rename', rename('Mine again'));
    expect(await autosave.flush()).toBe(true);
  });

  it('its change is one step: what was done here before it can still be undone', async () => {
    const { actions, autosave, workbench, changeElsewhere, inside } = tab();
    await actions.create(sample('one', 'Mine'));
    edit('Rename', rename('Mine, changed'));
    await autosave.flush();
    await changeElsewhere('one', 'Theirs');
    await workbench.lookForOthersChange();
    expect(open()?.name).toBe('Theirs');
    expect(session.getState().history.past.at(-1)?.label).toBe('Change in another tab');
    undo();
    expect(open()?.name).toBe('Mine, changed');
    undo();
    expect(open()?.name).toBe('Mine');
    redo();
    redo();
    expect(open()?.name).toBe('Theirs');
    undo();
    expect(await autosave.flush()).toBe(true);
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Mine, changed' } });
  });

  it('a storage that was cleared is no other tab’s doing: what is open is stored again', async () => {
    const { actions, workbench, inside } = tab();
    await actions.create(sample('one', 'Mine'));
    await inside.remove('one');
    await inside.forget(Number.POSITIVE_INFINITY);
    await workbench.lookForOthersChange();
    expect(saving()?.kind).toBe('saved');
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Mine' } });
    expect(onCleared).toHaveBeenCalledOnce();
  });

  it('its change and an unsaved one are a conflict, which closing does not hide', async () => {
    const { actions, workbench, changeElsewhere } = tab();
    await actions.create(sample('one', 'Mine'));
    await changeElsewhere('one', 'Theirs');
    edit('Rename', rename('Mine, changed'));
    await workbench.lookForOthersChange();
    expect(saving()).toEqual({ kind: 'conflict' });
    await expect(actions.close()).rejects.toThrow('another tab changed this layout');
    expect(open()?.name).toBe('Mine, changed');
  });

  it('a conflict ends by keeping this tab’s work as a copy', async () => {
    const { actions, autosave, inside, changeElsewhere } = tab();
    await actions.create(sample('one', 'Mine'));
    await changeElsewhere('one', 'Theirs');
    edit('Rename', rename('Mine, changed'));
    await autosave.flush();
    await actions.resolveConflict('keep-mine-as-copy');
    expect(open()?.name).toBe('Mine, changed (copy)');
    expect(saving()?.kind).toBe('saved');
    expect((await inside.list()).rows.map(({ name }) => name).sort()).toEqual([
      'Mine, changed (copy)',
      'Theirs',
    ]);
  });

  it('or by taking the other’s, and then edits are saved again', async () => {
    const { actions, autosave, inside, changeElsewhere } = tab();
    await actions.create(sample('one', 'Mine'));
    await changeElsewhere('one', 'Theirs');
    edit('Rename', rename('Mine, changed'));
    await autosave.flush();
    await actions.resolveConflict('take-theirs');
    expect(open()?.name).toBe('Theirs');
    edit('Rename', rename('Theirs, changed'));
    await autosave.flush();
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Theirs, changed' } });
  });

  it('a layout that is deleted elsewhere is a conflict; taking theirs closes it', async () => {
    const { actions, workbench, inside } = tab();
    await actions.create(sample('one'));
    await inside.remove('one');
    await workbench.lookForOthersChange();
    expect(saving()).toEqual({ kind: 'conflict' });
    await actions.resolveConflict('take-theirs');
    expect(open()).toBeUndefined();
    expect(rows()).toEqual([]);
  });

  it('its own save, heard late, is no change of another', async () => {
    const { actions, autosave, workbench } = tab();
    await actions.create(sample('one'));
    const looking = workbench.lookForOthersChange();
    edit('Rename', rename('Changed'));
    await Promise.all([looking, autosave.flush()]);
    expect(open()?.name).toBe('Changed');
    expect(saving()?.kind).toBe('saved');
  });
});

describe('what an earlier page left', () => {
  it('is stored over the revision it continues', async () => {
    const { inside, workbench } = tab();
    await inside.save(sample('one', 'Stored'), NOTHING_STORED);
    expect(await workbench.takeUp({ layout: sample('one', 'Left'), revision: 1 })).toBe(true);
    expect(await inside.load('one')).toMatchObject({ revision: 2, layout: { name: 'Left' } });
    expect(await workbench.takeUp({ layout: sample('one', 'Left'), revision: 1 })).toBe(true);
    expect((await inside.list()).rows).toHaveLength(1);
  });

  it('is kept as a copy where the stored layout went on without it', async () => {
    const { inside, workbench, changeElsewhere } = tab();
    await inside.save(sample('one', 'Stored'), NOTHING_STORED);
    await changeElsewhere('one', 'Theirs');
    expect(await workbench.takeUp({ layout: sample('one', 'Left'), revision: 1 })).toBe(true);
    const names = (await inside.list()).rows.map(({ name }) => name).sort();
    expect(names).toEqual(['Left (copy)', 'Theirs']);
  });

  it('is not stored where the storage refuses', async () => {
    const { workbench, breakDown } = tab();
    breakDown();
    expect(await workbench.takeUp({ layout: sample('one'), revision: NOTHING_STORED })).toBe(false);
  });
});

describe('a storage that refuses', () => {
  it('is said, and work goes on: create, close, open again, export', async () => {
    const { actions, files, breakDown } = tab();
    breakDown();
    await actions.create(sample('one', 'Kept'));
    const failed = { kind: 'failed', reason: 'unavailable', detail: 'No storage today.' };
    await expect.poll(saving).toEqual(failed);
    edit('Rename', rename('Kept on'));
    await actions.close();
    expect(rows()).toEqual(['Kept on']);
    expect(saving()).toEqual(failed);
    await actions.open('one');
    expect(open()?.name).toBe('Kept on');
    await expect.poll(saving).toEqual(failed);
    await actions.exportFile();
    expect(files.map(({ name }) => name)).toEqual(['Kept on.json']);
  });

  it('takes everything when it works again', async () => {
    const { actions, inside, breakDown, repair } = tab();
    await actions.create(sample('one', 'Old'));
    breakDown();
    edit('Rename', rename('New'));
    await actions.close();
    await actions.create(sample('two', 'Second'));
    expect((await inside.list()).rows.map(({ name }) => name)).toEqual(['Old']);
    repair();
    await actions.close();
    expect((await inside.list()).rows.map(({ name }) => name).sort()).toEqual(['New', 'Second']);
    expect(saving()).toBeNull();
  });
});

describe('a new version', () => {
  it('is used only after the open layout is saved', async () => {
    const { actions, inside, updates, offerUpdate } = tab();
    await expect(actions.applyUpdate()).rejects.toThrow('no new version');
    offerUpdate();
    await actions.create(sample('one'));
    edit('Rename', rename('Last edit'));
    await actions.applyUpdate();
    expect(updates).toEqual(['Last edit']);
    expect(await inside.load('one')).toMatchObject({ layout: { name: 'Last edit' } });
  });

  it('waits while the open layout can’t be saved', async () => {
    const { actions, updates, offerUpdate, breakDown } = tab();
    offerUpdate();
    await actions.create(sample('one'));
    breakDown();
    edit('Rename', rename('Last edit'));
    await expect(actions.applyUpdate()).rejects.toThrow('could not be saved first');
    expect(updates).toEqual([]);
  });
});

describe('the history of the open layout', () => {
  it('tells every revision, the last one first, what is unsaved included', async () => {
    const { actions } = tab();
    await actions.create(sample('one', 'A1'));
    edit('Rename', rename('A2'));
    const points = await actions.history.list();
    expect(points.map(({ revision, tip }) => [revision, tip])).toEqual([
      [2, 'holds'],
      [1, null],
    ]);
    expect((await actions.history.read(1)).name).toBe('A1');
    await expect(actions.history.read(9)).rejects.toThrow('not here any more');
  });

  it('names a point, in 80 characters at most', async () => {
    const { actions } = tab();
    await actions.create(sample('one'));
    await actions.history.name(1, ` ${'x'.repeat(99)} `);
    expect((await actions.history.list())[0]?.name).toBe('x'.repeat(80));
    await expect(actions.history.name(9, 'Gone')).rejects.toThrow('not here any more');
  });

  it('says that no layout is open', async () => {
    const { actions } = tab();
    await expect(actions.history.list()).rejects.toThrow('no layout is open');
  });
});
