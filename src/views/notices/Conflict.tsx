import type { LibraryActions } from '../../session/library.ts';
import { Notice } from '../parts/Notice.tsx';
import { useTask } from '../parts/useTask.ts';

/** Another tab changed the same layout. Both versions exist until one is chosen. */
export function Conflict({ actions }: { readonly actions: LibraryActions }) {
  const task = useTask();
  const choose = (choice: Parameters<LibraryActions['resolveConflict']>[0]) =>
    task.run('Settling this', () => actions.resolveConflict(choice));
  return (
    <Notice
      tone="alarm"
      title="This layout was changed in another tab too"
      actions={
        <>
          <button
            type="button"
            className="primary"
            disabled={task.busy}
            onClick={() => choose('keep-mine-as-copy')}
          >
            Keep mine as a copy
          </button>
          <button type="button" disabled={task.busy} onClick={() => choose('take-theirs')}>
            Take the other tab's
          </button>
        </>
      }
    >
      Nothing of either is lost until you choose. {task.failure}
    </Notice>
  );
}
