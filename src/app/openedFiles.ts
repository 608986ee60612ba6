import type { LibraryActions } from '../session/library.ts';
import { session } from '../session/session.ts';
import { takeInFiles } from '../views/library/takeInFiles.ts';
import { notOpenedWords, openedWords } from '../views/words/takenFilesWords.ts';
import { sayNews } from './newsLine.ts';
import { sayTrouble } from './trouble.ts';

/** What of the browser's launch queue is used: files that the system opens with the installed app. Not in every browser. */
interface LaunchQueue {
  setConsumer(consumer: (launch: { readonly files?: readonly FileHandle[] }) => void): void;
}

interface FileHandle {
  getFile(): Promise<File>;
}

/** Takes the files that the system opens with the app. */
export function takeOpenedFiles(
  target: { readonly launchQueue?: LaunchQueue } | Window,
  take: (files: readonly File[]) => Promise<void>,
): void {
  const queue =
    'launchQueue' in target ? (target.launchQueue as LaunchQueue | undefined) : undefined;
  queue?.setConsumer(({ files: handles = [] }) => {
    const all = async () => take(await Promise.all(handles.map((handle) => handle.getFile())));
    all().catch(sayNotOpened);
  });
}

/** Takes the files that are dropped where no screen takes them itself: over an open layout. */
export function takeDroppedFiles(
  target: Window,
  take: (files: readonly File[]) => Promise<void>,
): void {
  target.addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  });
  target.addEventListener('drop', (event) => {
    // Without this the browser would leave the app and show the file.
    const isTaken = event.defaultPrevented;
    event.preventDefault();
    if (!isTaken) take([...(event.dataTransfer?.files ?? [])]).catch(sayNotOpened);
  });
}

const sayNotOpened = (error: unknown): void => sayTrouble('A file could not be opened', error);

/**
 * Takes files in: layouts, of which the first is opened, and whole libraries, over which what is open stays open. Where the others are is said, and what is
 * wrong with a file is said as trouble; nothing that is stored changes then.
 */
export async function openFiles(
  actions: Pick<LibraryActions, 'importFile' | 'importLibrary' | 'isLibrary' | 'open'>,
  files: readonly File[],
): Promise<void> {
  const { layouts, refused } = await takeInFiles(actions, files);
  if (refused.length > 0) {
    const [title, detail] = notOpenedWords(refused);
    sayTrouble(title, new Error(detail));
  }
  const [first] = layouts;
  if (first === undefined) return;
  await actions.open(first);
  const rows = session.getState().library;
  const names = layouts.flatMap((id) => rows?.find((row) => row.id === id)?.name ?? []);
  if (names.length > 1) sayNews(openedWords(names));
}
