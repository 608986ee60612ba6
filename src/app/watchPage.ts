import type { StoragePort } from '../storage/port.ts';
import type { Autosave } from './autosave.ts';
import { sayTrouble } from './trouble.ts';
import type { Workbench } from './workbench.ts';

interface PageSurroundings {
  readonly storage: StoragePort;
  readonly autosave: Autosave;
  readonly workbench: Workbench;
  inTurn<T>(task: () => Promise<T>): Promise<T>;
}

/** Saves when the page is put away, and looks at what other tabs did when it is back or when they say so. */
export function watchPage({ storage, autosave, workbench, inTurn }: PageSurroundings): void {
  const look = (): void => {
    inTurn(async () => {
      await workbench.lookForOthersChange();
      await workbench.refresh();
    }).catch((error: unknown) => sayTrouble('Another tab’s change could not be read', error));
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void autosave.flush();
    else look();
  });
  window.addEventListener('pagehide', () => void autosave.flush());
  window.addEventListener('beforeunload', (event) => {
    if (autosave.wouldLose()) event.preventDefault();
  });
  storage.watch((change) => {
    if (change.kind !== 'closed') look();
    else if (change.why === 'newer-version') {
      sayTrouble(
        'Another tab runs a newer version of the app',
        new Error(
          'This tab can’t save any more. Export what is not saved, then load the page again.',
        ),
      );
    }
  });
}
