import type { LibraryActions, LibraryImport } from '../session/library.ts';
import { session } from '../session/session.ts';
import {
  isLibraryFile,
  type LibraryFile,
  type LibraryRead,
  libraryFile,
  type TakenIn,
  takeInLibrary,
} from '../storage/libraryFile.ts';
import type { StoragePort } from '../storage/port.ts';
import type { FullStorage } from '../storage/shelved.ts';
import type { Workbench } from './workbench.ts';

interface WholeLibrarySurroundings {
  readonly storage: StoragePort;
  readonly full: FullStorage;
  readonly workbench: Workbench;
  handOut(file: LibraryFile): Promise<void>;
  inTurn<T>(task: () => Promise<T>): Promise<T>;
}

type WholeLibraryActions = Pick<
  LibraryActions,
  'mark' | 'deleted' | 'exportLibrary' | 'isLibrary' | 'importLibrary'
>;

/** Marks, what was deleted, and the whole library as a file, connected. */
export function wholeLibraryActions(around: WholeLibrarySurroundings): WholeLibraryActions {
  const { storage, full, workbench, inTurn } = around;
  return {
    mark: (id, marks) =>
      inTurn(async () => {
        const outcome = await storage.mark(id, marks);
        if (!outcome.ok) throw new Error(outcome.kind === 'missing' ? gone : outcome.detail);
        await workbench.refresh();
      }),
    deleted: () =>
      inTurn(async () => {
        const rows = await storage.removed();
        if ('ok' in rows) throw new Error(rows.detail);
        return rows;
      }),
    exportLibrary: () => inTurn(async () => around.handOut(await libraryFile(full, Date.now()))),
    isLibrary: isLibraryFile,
    importLibrary: (file) =>
      inTurn(async () => {
        const tell = (read: number, promised: number) =>
          session.setState({ taking: { read, promised } });
        const read = await takeInLibrary(full, file, tell).finally(() =>
          session.setState({ taking: null }),
        );
        // What is open may have gone on in the file.
        await workbench.lookForOthersChange();
        await workbench.refresh();
        const { taken: unread } = session.getState();
        session.setState({ taken: [...unread, { ...summary(read), file: file.name }] });
      }),
  };
}

const gone = 'it is not here any more. Another tab may have deleted it.';

function summary({ layouts, isCutOff, promised, damagedPoints }: LibraryRead): LibraryImport {
  const good = layouts.filter((one) => one.ok);
  // Where both have one, it is called as it is here.
  const here = new Map(session.getState().library?.map(({ id, name }) => [id, name]));
  const names = (kind: Extract<TakenIn, { ok: true }>['kind']) =>
    good.filter((one) => one.kind === kind).map(({ name }) => name);
  return {
    added: names('new'),
    wentOn: names('went-on'),
    twoLines: good
      .filter(({ kind }) => kind === 'two-lines')
      .map(({ id, name }) => ({ id, name: here.get(id) ?? name })),
    same: names('nothing-new').length + names('history').length,
    failed: layouts.flatMap((one) => (one.ok ? [] : [{ name: one.name, why: one.why }])),
    isCutOff,
    promised,
    read: layouts.length,
    damagedPoints,
  };
}
