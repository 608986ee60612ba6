import type { Problem } from '../layout/problem.ts';
import type { ReadResult } from '../layout/read.ts';
import type { ImportOutcome, LibraryActions } from '../session/library.ts';
import { edit } from '../session/session.ts';
import {
  fileName,
  layoutFile,
  readLayoutFile,
  type SheetFile,
  sheetFile,
  type TextFile,
  tableFile,
} from '../storage/files.ts';
import { newLayoutId } from '../storage/ids.ts';
import type { LibraryFile } from '../storage/libraryFile.ts';
import type { StoragePort } from '../storage/port.ts';
import type { FullStorage } from '../storage/shelved.ts';
import type { Autosave } from './autosave.ts';
import { boundedName, nameBeside } from './copyName.ts';
import { historyActions } from './historyActions.ts';
import { playersIn } from './playersIn.ts';
import { wholeLibraryActions } from './wholeLibraryActions.ts';
import type { Workbench } from './workbench.ts';

export interface LibrarySurroundings {
  readonly storage: StoragePort;
  readonly autosave: Autosave;
  readonly workbench: Workbench;
  /** The storage beneath the shelter, for whole libraries. */
  readonly full: FullStorage;
  handOut(file: TextFile | SheetFile | LibraryFile): Promise<void>;
  askToKeep(): Promise<boolean>;
  /** Puts the waiting new version to use and loads the page again; null when none waits. */
  readonly update: () => (() => Promise<void>) | null;
  /** Runs one task after the other, so that a second tap meets what the first one left. */
  inTurn<T>(task: () => Promise<T>): Promise<T>;
}

/** What screens ask of the library, connected. What can't be done rejects with a message that says why. */
export function libraryActions(around: LibrarySurroundings): LibraryActions {
  const { workbench, inTurn } = around;
  return {
    open: (id) => inTurn(() => workbench.open(id)),
    create: (layout) =>
      inTurn(async () => {
        await workbench.leave();
        await workbench.storeNew(layout);
        await workbench.open(layout.id);
      }),
    startNext: (next) =>
      inTurn(async () => {
        await workbench.leave();
        const there = next.origin && (await around.storage.load(next.origin.layout));
        const revision = there?.ok ? there.revision : null;
        await workbench.storeNew({ ...next, origin: next.origin && { ...next.origin, revision } });
        await workbench.open(next.id);
      }),
    duplicate: (id) =>
      inTurn(async () => {
        const open = workbench.openNow();
        const { layout } = open?.id === id ? { layout: open } : await workbench.load(id);
        const name = nameBeside(layout.name, await namesIn(around.storage), 'copy');
        await workbench.storeNew({ ...layout, id: newLayoutId(), name });
      }),
    rename: (id, wanted) =>
      inTurn(async () => {
        const name = boundedName(wanted.trim());
        if (name === '') throw new Error('a name is needed.');
        if (workbench.openNow()?.id !== id) return workbench.rename(id, name);
        edit('Rename', (layout) => (layout.name === name ? layout : { ...layout, name }));
      }),
    remove: (id) => inTurn(() => workbench.remove(id)),
    restore: (id) => inTurn(() => workbench.restore(id)),
    close: () => inTurn(() => workbench.close()),
    ...exports(around),
    importFile: (file) =>
      inTurn(async () => {
        const read = await readLayoutFile(file, newLayoutId());
        if (!read.ok) return refused(read);
        // The same file once more is another layout: told apart, as a copy is.
        const name = nameBeside(read.layout.name, await namesIn(around.storage));
        await workbench.storeNew({ ...read.layout, name });
        return { ok: true, id: read.layout.id };
      }),
    ...wholeLibraryActions(around),
    history: historyActions(around),
    players: () => playersIn(around.storage, workbench.openNow()?.id),
    resolveConflict: (choice) =>
      inTurn(() =>
        choice === 'take-theirs' ? workbench.takeTheirs() : workbench.keepMineAsCopy(),
      ),
    askToKeep: () => around.askToKeep(),
    saveNow: () =>
      inTurn(async () => {
        if (!(await around.autosave.flush())) {
          throw new Error('the layout could not be saved. Export it, then try again.');
        }
      }),
    applyUpdate: () =>
      inTurn(async () => {
        const update = around.update();
        if (update === null) throw new Error('no new version is waiting.');
        if (!(await around.autosave.flush())) {
          throw new Error('the open layout could not be saved first. Export it, then try again.');
        }
        await update();
      }),
  };
}

/** Names that the list shows. */
const namesIn = async (storage: StoragePort): Promise<readonly string[]> =>
  (await storage.list()).rows.map(({ name }) => name);

type Exports = Pick<LibraryActions, 'exportFile' | 'exportTable' | 'exportSheet'>;

/** Files that are handed out. */
const exports = (around: LibrarySurroundings): Exports => ({
  exportFile: (id) => exportFile(around, id),
  exportTable: async (table, csv) => {
    const open = around.workbench.openNow();
    if (open) await around.handOut(tableFile(open, table, csv));
  },
  exportSheet: async (what, format, content) => {
    const open = around.workbench.openNow();
    if (open) await around.handOut(sheetFile(open, what, format, content));
  },
});

/** The open layout is handed out as it is now, whatever the storage does meanwhile. */
async function exportFile(around: LibrarySurroundings, id: string | undefined): Promise<void> {
  const open = around.workbench.openNow();
  if (open && (id === undefined || id === open.id)) {
    void around.autosave.flush();
    return around.handOut(layoutFile(open));
  }
  if (id === undefined) throw new Error('no layout is open.');
  const there = await around.storage.load(id);
  if (there.ok) return around.handOut(layoutFile(there.layout));
  if (there.kind === 'unreadable') {
    return around.handOut({ name: fileName(there.name), text: there.text });
  }
  throw new Error(there.kind === 'missing' ? 'it is not here any more.' : there.detail);
}

function refused({ problems, more }: Extract<ReadResult, { ok: false }>): ImportOutcome {
  const rest = { path: '', message: `and ${more} more of the kind` };
  return { ok: false, problems: [...problems.map(said), ...(more > 0 ? [rest] : [])] };
}

const said = ({ path, expected, actual }: Problem) => ({
  path,
  message: `expected ${expected}, found ${actual}`,
});
