import { useState } from 'react';
import type { LibraryActions } from '../../session/library.ts';
import { Notice } from '../parts/Notice.tsx';
import { useTask } from '../parts/useTask.ts';

/** A new version is ready. It waits as long as the user likes. */
export function UpdateWaiting({ actions }: { readonly actions: LibraryActions }) {
  const task = useTask();
  const [later, setLater] = useState(false);
  if (later) return null;
  return (
    <Notice
      tone="news"
      title="A new version is ready"
      actions={
        <>
          <button
            type="button"
            className="primary"
            disabled={task.busy}
            onClick={() => task.run('Updating', () => actions.applyUpdate())}
          >
            Save and update
          </button>
          <button type="button" onClick={() => setLater(true)}>
            Later
          </button>
        </>
      }
    >
      Your work is saved first. It waits until you want it. {task.failure}
    </Notice>
  );
}
