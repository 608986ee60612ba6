import { useState } from 'react';
import type { LibraryActions } from '../../session/library.ts';
import { useSession } from '../../session/session.ts';
import { useTask } from '../parts/useTask.ts';

/** Whether the browser promised to keep the layouts, and the way to ask for it. */
export function KeepData({ actions }: { readonly actions: LibraryActions }) {
  const kept = useSession((state) => state.kept);
  const [refused, setRefused] = useState(false);
  const task = useTask();
  const ask = () =>
    task.run('Asking', async () => {
      setRefused(!(await actions.askToKeep()));
    });
  return (
    <section className="card" aria-labelledby="keep-title">
      <h2 id="keep-title">Where layouts are kept</h2>
      <p className="small soft">
        On this device, in this browser. Nothing is sent anywhere, and no network is needed.
      </p>
      <SecondCopy />
      {kept === true ? (
        <p className="kept">The browser has promised to keep them.</p>
      ) : (
        <>
          <p>
            The browser has not promised to keep them: it may clear them when space is short. Export
            what matters.
          </p>
          <button type="button" onClick={ask} disabled={task.busy}>
            Ask it to keep them
          </button>
        </>
      )}
      <p className="small" role="status">
        {refused && kept !== true
          ? 'The browser did not promise it yet. Installing the app on the home screen usually helps.'
          : task.failure}
      </p>
    </section>
  );
}

/** Whether everything stands in two places on this device. */
function SecondCopy() {
  const copy = useSession((state) => state.copy);
  const isAllSaved = useSession((state) => state.unsaved.length === 0);
  if (!isAllSaved) {
    return <p>Not everything is kept: what is marked “Not saved” goes when this page is closed.</p>;
  }
  if (copy.kind === 'checking')
    return <p className="small soft">Comparing with the second copy…</p>;
  if (copy.kind === 'kept') {
    return (
      <p className="kept">
        Everything is kept twice: in the browser’s database, and in a journal beside it.
      </p>
    );
  }
  return (
    <p>
      There is one copy only, because there is no journal beside the database: {copy.why}. Export
      what matters.
    </p>
  );
}
