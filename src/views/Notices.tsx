import type { LibraryActions } from '../session/library.ts';
import { useSession } from '../session/session.ts';
import { Conflict } from './notices/Conflict.tsx';
import { RestoredNotice } from './notices/RestoredNotice.tsx';
import { SaveRefused } from './notices/SaveRefused.tsx';
import { TakenLibrary } from './notices/TakenLibrary.tsx';
import { UpdateWaiting } from './notices/UpdateWaiting.tsx';
import { Notice } from './parts/Notice.tsx';

/** What the user must know wherever they are: nothing here is forced, nothing goes away unsaid. */
export function Notices({ actions }: { readonly actions: LibraryActions }) {
  const saving = useSession((state) => state.saving);
  const updateWaiting = useSession((state) => state.updateWaiting);
  const saysInsecure = saving?.kind === 'failed' && saving.reason === 'insecure';
  return (
    <aside className="notices" aria-label="Notices">
      {saving?.kind === 'conflict' && <Conflict actions={actions} />}
      {saving?.kind === 'failed' && <SaveRefused refused={saving} actions={actions} />}
      <RestoredNotice />
      <TakenLibrary actions={actions} />
      {updateWaiting && <UpdateWaiting actions={actions} />}
      {!(window.isSecureContext || saysInsecure) && (
        <Notice tone="news" title="Only with the network for now">
          This address is not secure (neither https nor localhost), so the browser does not keep the
          app for use without a network. Layouts are still stored on this device.
        </Notice>
      )}
    </aside>
  );
}
