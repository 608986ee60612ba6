import { useSession } from '../session/session.ts';
import { Notice } from '../views/parts/Notice.tsx';
import { capitalised } from '../views/words/nameOf.ts';
import { exportOpen } from './exportOpen.ts';
import { dismissTrouble, useTrouble } from './trouble.ts';

/** What failed, with the way to bring the work out all the same. */
export function TroubleNotice() {
  const trouble = useTrouble();
  const isOpen = useSession((state) => state.open !== null);
  if (trouble === null) return null;
  return (
    <aside className="notices" aria-label="Trouble">
      <Notice
        tone="alarm"
        title={trouble.title}
        actions={
          <>
            {isOpen && (
              <button type="button" className="primary" onClick={exportOpen}>
                Export this layout
              </button>
            )}
            <button type="button" onClick={() => location.reload()}>
              Load the page again
            </button>
            <button type="button" onClick={dismissTrouble}>
              Dismiss
            </button>
          </>
        }
      >
        {capitalised(trouble.detail)}
      </Notice>
    </aside>
  );
}
