import { Notice } from '../parts/Notice.tsx';
import { ImportProblems } from './ImportProblems.tsx';
import type { Library } from './useLibrary.ts';

/** What just happened to the list: a deletion that can be undone, a refusal, a file that was not taken. */
export function LibraryMessages({ library }: { readonly library: Library }) {
  const { task, deleted, refused } = library;
  return (
    <>
      {task.failure !== '' && (
        <Notice
          tone="alarm"
          title={task.failure}
          actions={
            <button type="button" onClick={task.dismiss}>
              Dismiss
            </button>
          }
        >
          Nothing was changed.
        </Notice>
      )}
      {deleted !== null && (
        <Notice
          tone="news"
          title={`Deleted “${deleted.name}”`}
          actions={
            <>
              <button type="button" className="primary" onClick={library.restore}>
                Undo
              </button>
              <button type="button" onClick={library.forgetDeleted}>
                Dismiss
              </button>
            </>
          }
        >
          It can be brought back until this page is closed.
        </Notice>
      )}
      {refused !== null && (
        <ImportProblems
          file={refused.file}
          problems={refused.problems}
          onClose={library.forgetRefused}
        />
      )}
    </>
  );
}
