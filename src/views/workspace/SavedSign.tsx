import { useSession } from '../../session/session.ts';
import { saveWords } from '../words/saveWords.ts';

/** Whether what is seen is on the disk. */
export function SavedSign() {
  const saving = useSession((state) => state.saving);
  const copies = useSession((state) => state.copy.kind);
  const bad = saving?.kind === 'failed' || saving?.kind === 'conflict';
  return (
    <p className={bad ? 'saved-sign bad' : 'saved-sign'} data-saving={saving?.kind ?? 'unknown'}>
      {saveWords(saving)}
      {saving?.kind === 'saved' && copies === 'missing' && ', one copy only'}
    </p>
  );
}
