import type { LibraryActions } from '../../session/library.ts';
import { session, useSession } from '../../session/session.ts';
import { LibraryReport } from '../library/LibraryReport.tsx';
import { Notice } from '../parts/Notice.tsx';
import { useTask } from '../parts/useTask.ts';
import { counted } from '../words/nameOf.ts';

/** How far a library is that is being taken in, then what became of it: on the list and over an open layout. */
export function TakenLibrary({ actions }: { readonly actions: LibraryActions }) {
  const taking = useSession((state) => state.taking);
  const unread = useSession((state) => state.taken);
  const [taken] = unread;
  const task = useTask();
  const close = () => session.setState({ taken: unread.slice(1) });
  return (
    <>
      {taking !== null && (
        <Notice tone="news" title="Taking a library in">
          {taking.read} of {counted(taking.promised, 'layout')}
        </Notice>
      )}
      {task.failure !== '' && (
        <Notice tone="alarm" title={task.failure}>
          Nothing was changed.
        </Notice>
      )}
      {taken !== undefined && (
        <LibraryReport
          key={unread.length}
          report={taken}
          onOpen={(id) => {
            close();
            task.run('Opening', () => actions.open(id));
          }}
          onClose={close}
        />
      )}
    </>
  );
}
