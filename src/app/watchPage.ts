import { cancelGesture } from '../session/session.ts';
import type { ShelteredStorage } from '../storage/sheltered.ts';
import type { Autosave } from './autosave.ts';
import { leaveField } from './leaveField.ts';
import type { LeaveNotes } from './leaveNotes.ts';
import { sayTrouble } from './trouble.ts';
import type { Workbench } from './workbench.ts';

interface PageSurroundings {
  readonly storage: ShelteredStorage;
  readonly autosave: Autosave;
  readonly workbench: Workbench;
  readonly notes: LeaveNotes;
  inTurn<T>(task: () => Promise<T>): Promise<T>;
}

/**
 * Saves when the page is put away, with what is still being typed and without a gesture that is under way, whose finger may never come
 * back; and looks at what other tabs did when it is back or when they say so.
 */
export function watchPage(around: PageSurroundings): void {
  const { storage, autosave, workbench, notes, inTurn } = around;
  const look = (): void => {
    inTurn(async () => {
      await workbench.lookForOthersChange();
      await workbench.refresh();
    }).catch((error: unknown) => sayTrouble('Another tab’s change could not be read', error));
  };
  const putAway = (): void => {
    cancelGesture();
    leaveField();
    void autosave.flush();
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') return look();
    putAway();
  });
  window.addEventListener('beforeunload', (event) => {
    void autosave.flush();
    if (autosave.wouldLose() || storage.held().length > 0) event.preventDefault();
  });
  window.addEventListener('pagehide', () => {
    putAway();
    notes.leave(autosave.unstored());
  });
  // A page that comes back from the browser's memory goes on by itself.
  window.addEventListener('pageshow', () => notes.leave(null));
  storage.watch((change) => {
    // Cleared, or taken away, which is how some browsers clear: what is open may have to be stored again.
    if (change.kind !== 'closed' || change.why !== 'newer-version') look();
    else {
      sayTrouble(
        'Another tab runs a newer version of the app',
        new Error(
          'This tab can’t save any more. Export what is not saved, then load the page again.',
        ),
      );
    }
  });
}
