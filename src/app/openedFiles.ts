import type { LibraryActions } from '../session/library.ts';
import { sayTrouble } from './trouble.ts';

/** What of the browser's launch queue is used: files that the system opens with the installed app. Not in every browser. */
interface LaunchQueue {
  setConsumer(consumer: (launch: { readonly files?: readonly FileHandle[] }) => void): void;
}

interface FileHandle {
  getFile(): Promise<File>;
}

/** Takes every file that the system opens with the app, one after another. */
export function takeOpenedFiles(
  target: { readonly launchQueue?: LaunchQueue } | Window,
  take: (file: File) => Promise<void>,
): void {
  const queue =
    'launchQueue' in target ? (target.launchQueue as LaunchQueue | undefined) : undefined;
  queue?.setConsumer(({ files = [] }) => {
    const all = async () => {
      for (const handle of files) await take(await handle.getFile());
    };
    all().catch((error: unknown) => sayTrouble('A file could not be opened', error));
  });
}

/** Takes every file that is dropped where no screen takes it itself: over an open layout. */
export function takeDroppedFiles(target: Window, take: (file: File) => Promise<void>): void {
  target.addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  });
  target.addEventListener('drop', (event) => {
    // Without this the browser would leave the app and show the file.
    const isTaken = event.defaultPrevented;
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file === undefined || isTaken) return;
    take(file).catch((error: unknown) => sayTrouble('A file could not be opened', error));
  });
}

/**
 * Takes a layout file in and opens it, or a whole library, over which what is open stays open. What is wrong with a file is said as
 * trouble; nothing that is stored changes then.
 */
export async function openFile(
  actions: Pick<LibraryActions, 'importFile' | 'importLibrary' | 'isLibrary' | 'open'>,
  file: File,
): Promise<void> {
  if (await actions.isLibrary(file)) return actions.importLibrary(file);
  const outcome = await actions.importFile(file);
  if (outcome.ok) return actions.open(outcome.id);
  const faults = outcome.problems.map(({ path, message }) =>
    path === '' ? message : `${path}: ${message}`,
  );
  sayTrouble(`“${file.name}” was not opened`, new Error(faults.slice(0, 3).join(' ')));
}
