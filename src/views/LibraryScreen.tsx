import type { LibraryActions } from '../session/library.ts';
import { useSession } from '../session/session.ts';
import { ReadCodes } from './handOver/ReadCodes.tsx';
import { Cautions } from './library/Cautions.tsx';
import { FirstRun } from './library/FirstRun.tsx';
import { ImportFile } from './library/ImportFile.tsx';
import { KeepData } from './library/KeepData.tsx';
import { LayoutList } from './library/LayoutList.tsx';
import { LibraryMessages } from './library/LibraryMessages.tsx';
import { useFileDrop } from './library/useFileDrop.ts';
import { useLibrary } from './library/useLibrary.ts';
import { WholeLibrary } from './library/WholeLibrary.tsx';
import { ThemeChoice } from './parts/ThemeChoice.tsx';
import { useArrival } from './parts/useArrival.ts';
import { useRootTheme } from './parts/useRootTheme.ts';

/** The list of layouts: open, start, copy, delete, take in and hand out. */
export function LibraryScreen({ actions }: { readonly actions: LibraryActions }) {
  useRootTheme();
  const rows = useSession((state) => state.library);
  const library = useLibrary(actions);
  const heading = useArrival();
  const drop = useFileDrop(library.takeIn);
  return (
    <div className={drop.over ? 'library dropping' : 'library'} {...drop.handlers}>
      <header className="library-head">
        <div>
          <h1 ref={heading} tabIndex={-1}>
            Strokespace
          </h1>
          <p className="soft">Mics, stands and cables of a drum kit, clear of the sticks.</p>
        </div>
        <ThemeChoice />
      </header>
      <div className="library-body">
        <main className="library-list">
          <LibraryMessages library={library} />
          {rows === null && <p role="status">Looking for the layouts on this device…</p>}
          {rows?.length === 0 && <FirstRun library={library} />}
          {rows !== null && rows.length > 0 && <LayoutList rows={rows} library={library} />}
          <div className="import-line">
            <ImportFile onFiles={library.takeIn} />
            <ReadCodes
              onText={(text) => library.takeIn([new File([text], 'Codes of another tablet')])}
            />
            <span className="small soft">or drop layout files anywhere on this page</span>
          </div>
          <WholeLibrary library={library} actions={actions} />
        </main>
        <aside className="library-side" aria-label="About this device and safety">
          <KeepData actions={actions} />
          <Cautions />
        </aside>
      </div>
    </div>
  );
}
