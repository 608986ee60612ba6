import { useSession } from '../../session/session.ts';
import { Notice } from '../parts/Notice.tsx';
import { takenWords } from '../words/takenFilesWords.ts';
import { ImportProblems } from './ImportProblems.tsx';
import type { Library } from './useLibrary.ts';

/** What just happened to the list: a deletion that can be undone, an import, a refusal, a file that was not taken. */
export function LibraryMessages({ library }: { readonly library: Library }) {
  const {
    task,
    taken: { layouts, refused },
  } = library;
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
      <DeletedNotice library={library} />
      <ArchivedNotice library={library} />
      <ImportedNotice library={library} />
      {refused.length > 0 && (
        <ImportProblems refused={refused} taken={layouts.length} onClose={library.forgetRefused} />
      )}
    </>
  );
}

function DeletedNotice({ library }: { readonly library: Library }) {
  const { deleted } = library;
  // It may have been brought back from the bin, or by another tab.
  const isBack = useSession((state) => state.library?.some(({ id }) => id === deleted?.id));
  if (deleted === null || isBack) return null;
  return (
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
      It stays in the bin for 30 days.
    </Notice>
  );
}

function ArchivedNotice({ library }: { readonly library: Library }) {
  const { archived } = library;
  const isThere = useSession((state) =>
    state.library?.some((row) => row.id === archived?.id && row.archived),
  );
  if (archived === null || !isThere) return null;
  return (
    <Notice
      tone="news"
      title={`Archived “${archived.name}”`}
      actions={
        <>
          <button
            type="button"
            className="primary"
            onClick={() => library.mark(archived, { archived: false })}
          >
            Undo
          </button>
          <button type="button" onClick={library.forgetArchived}>
            Dismiss
          </button>
        </>
      }
    >
      It is found under Archive, and by words.
    </Notice>
  );
}

function ImportedNotice({ library }: { readonly library: Library }) {
  const { layouts } = library.taken;
  const rows = useSession((state) => state.library);
  const names = layouts.flatMap((id) => rows?.find((row) => row.id === id)?.name ?? []);
  const [first] = layouts;
  if (first === undefined || names.length === 0) return null;
  const [title, detail] = takenWords(names);
  return (
    <Notice
      tone="news"
      title={title}
      actions={
        <>
          {layouts.length === 1 && (
            <button type="button" className="primary" onClick={() => library.open({ id: first })}>
              Open it
            </button>
          )}
          <button type="button" onClick={library.forgetImported}>
            Dismiss
          </button>
        </>
      }
    >
      {detail}
    </Notice>
  );
}
