import { session, useSession } from '../../session/session.ts';
import { Notice } from '../parts/Notice.tsx';
import { counted } from '../words/nameOf.ts';

/** Names shown at once. */
const SHOWN = 5;

/** What the browser had lost from its database and what became of it. It stays until it is read. */
export function RestoredNotice() {
  const restored = useSession((state) => state.restored);
  if (restored === null) return null;
  const { names, failed } = restored;
  return (
    <Notice
      tone={failed.length > 0 ? 'alarm' : 'news'}
      title={
        names.length > 0
          ? `${counted(names.length, 'layout')} brought back from the second copy`
          : 'The second copy could not be read in full'
      }
      actions={
        <button type="button" onClick={() => session.setState({ restored: null })}>
          Dismiss
        </button>
      }
    >
      {names.length > 0 && (
        <p>
          The browser had lost them from its database; nothing of them is missing:{' '}
          {names.slice(0, SHOWN).join(', ')}
          {names.length > SHOWN && ` and ${names.length - SHOWN} more`}.
        </p>
      )}
      {failed.map(({ name, why }) => (
        <p key={name}>
          “{name}” could not be brought back: {why}.
        </p>
      ))}
    </Notice>
  );
}
