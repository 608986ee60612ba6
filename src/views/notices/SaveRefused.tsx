import type { LibraryActions, SaveState } from '../../session/library.ts';
import { useSession } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';
import { Notice } from '../parts/Notice.tsx';
import { useTask } from '../parts/useTask.ts';
import { refusalHelp, saveWords } from '../words/saveWords.ts';

interface SaveRefusedProps {
  readonly refused: Extract<SaveState, { kind: 'failed' }>;
  readonly actions: LibraryActions;
}

/** The last change is not on the disk: why, and how to keep the work all the same. */
export function SaveRefused({ refused, actions }: SaveRefusedProps) {
  const task = useTask();
  const isOpen = useSession((state) => state.open !== null);
  return (
    <Notice
      tone="alarm"
      title={saveWords(refused)}
      actions={
        isOpen && (
          <button
            type="button"
            className="primary"
            disabled={task.busy}
            onClick={() => task.run('Export', () => actions.exportFile())}
          >
            <Icon name="save" /> Export this layout
          </button>
        )
      }
    >
      {refusalHelp[refused.reason]} {refused.detail !== '' && `(${refused.detail})`} {task.failure}
    </Notice>
  );
}
