import { useState } from 'react';
import type { DeletedRow, LibraryActions } from '../../session/library.ts';
import { FieldProblem } from '../fields/FieldProblem.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useTask } from '../parts/useTask.ts';
import { dayWords } from '../words/timeWords.ts';
import type { Library } from './useLibrary.ts';

/** How long what was deleted can be brought back, ms. */
const KEPT = 30 * 24 * 3_600_000;

interface WholeLibraryProps {
  readonly library: Library;
  readonly actions: LibraryActions;
}

/** Everything as one file, and what was deleted. */
export function WholeLibrary({ library, actions }: WholeLibraryProps) {
  const [deleted, setDeleted] = useState<readonly DeletedRow[] | null>(null);
  const task = useTask();
  return (
    <div className="import-line">
      <button type="button" disabled={library.task.busy} onClick={library.exportLibrary}>
        <Icon name="save" /> Export the whole library
      </button>
      <button
        type="button"
        onClick={() =>
          task.run('Looking for them', async () => setDeleted(await actions.deleted()))
        }
      >
        <Icon name="bin" /> Bin
      </button>
      <FieldProblem text={task.failure} />
      {deleted !== null && (
        <Dialog title="Bin: deleted layouts" onClose={() => setDeleted(null)}>
          <p className="soft">
            {deleted.length === 0
              ? 'There are none.'
              : 'Each can be brought back for 30 days, with its whole history.'}
          </p>
          <ul className="lines framed">
            {deleted.map((row) => (
              <li key={row.id} className="line deleted-line">
                <span className="line-text">
                  <span className="line-name">{row.name}</span>
                  <span className="line-note">
                    {row.venue !== '' && `${row.venue} · `}
                    kept until {dayWords(row.removedAt + KEPT)}
                  </span>
                </span>
                <button
                  type="button"
                  disabled={task.busy}
                  onClick={() =>
                    task.run('Bringing it back', async () => {
                      await actions.restore(row.id);
                      setDeleted(await actions.deleted());
                    })
                  }
                >
                  Bring back<span className="spoken"> {row.name}</span>
                </button>
              </li>
            ))}
          </ul>
        </Dialog>
      )}
    </div>
  );
}
