import {
  appendTo,
  checkAgainst,
  gatherFrom,
  type JournalFile,
} from '../storage/journal/journal.ts';
import type { CopyAnswer, CopyQuestion } from '../storage/journal/secondCopy.ts';
import { tasksInTurn } from './inTurn.ts';

/**
 * Holds the journal in the browser's own file system. Only one page writes at a time: each piece of work takes a lock, opens
 * the files and lets go of them again, so that another tab can go on where this one stopped.
 */
const FOLDER = 'strokespace-journal';
const LOCK = 'strokespace-journal';
const OPEN_TRIES = 20;

interface HandleOfFile extends FileSystemFileHandle {
  createSyncAccessHandle(): Promise<FileSystemSyncAccessHandle>;
}
interface FileSystemSyncAccessHandle {
  getSize(): number;
  read(into: Uint8Array, options: { at: number }): number;
  write(bytes: Uint8Array, options: { at: number }): number;
  flush(): void;
  truncate(size: number): void;
  close(): void;
}

const inTurn = tasksInTurn();

addEventListener('message', ({ data }: MessageEvent<CopyQuestion>) => {
  inTurn(() => navigator.locks.request(LOCK, () => answered(data)))
    .then((value) => answer({ key: data.key, ok: true, value }))
    .catch((error: unknown) => {
      answer({
        key: data.key,
        ok: false,
        reason: error instanceof Error ? error.message : `${error}`,
      });
    });
});

const answer = (said: CopyAnswer): void => postMessage(said);

async function answered(question: CopyQuestion): Promise<unknown> {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle(FOLDER, { create: true });
  const names = await namesIn(folder);
  const newest = names.at(-1) ?? nameOf(1);
  switch (question.what) {
    case 'check':
      return withFiles(folder, names, (files) => checkAgainst(files, question.heads));
    case 'gather':
      return withFiles(folder, names, (files) => gatherFrom(files, question.ids));
    case 'append':
      return withFiles(folder, [newest], ([file]) => file && appendTo(file, question.bytes));
    case 'startAnew':
      return withFiles(folder, [nameOf(numberOf(newest) + 1)], ([file]) => file?.flush());
    case 'dropOlder':
      for (const name of names.slice(0, -1)) await folder.removeEntry(name);
      return null;
  }
}

const nameOf = (count: number): string => `${String(count).padStart(6, '0')}.journal`;
const numberOf = (name: string): number => Number.parseInt(name, 10);

/** Names of the journal's files, the oldest first. */
async function namesIn(folder: FileSystemDirectoryHandle): Promise<readonly string[]> {
  const names: string[] = [];
  for await (const name of folder.keys()) if (name.endsWith('.journal')) names.push(name);
  return names.sort();
}

async function withFiles<T>(
  folder: FileSystemDirectoryHandle,
  names: readonly string[],
  work: (files: readonly JournalFile[]) => T,
): Promise<T> {
  const handles: FileSystemSyncAccessHandle[] = [];
  try {
    for (const name of names) handles.push(await opened(folder, name));
    return work(handles.map(fileOf));
  } finally {
    for (const handle of handles) handle.close();
  }
}

/** A page that was closed in the middle may hold a file for a moment longer than its lock. */
async function opened(
  folder: FileSystemDirectoryHandle,
  name: string,
): Promise<FileSystemSyncAccessHandle> {
  const file = (await folder.getFileHandle(name, { create: true })) as HandleOfFile;
  for (let tries = 1; ; tries++) {
    try {
      return await file.createSyncAccessHandle();
    } catch (error) {
      const isHeld = error instanceof DOMException && error.name === 'NoModificationAllowedError';
      if (!isHeld || tries === OPEN_TRIES) throw error;
      await new Promise((go) => setTimeout(go, 50));
    }
  }
}

const fileOf = (handle: FileSystemSyncAccessHandle): JournalFile => ({
  size: () => handle.getSize(),
  read: (bytes, at) => handle.read(bytes, { at }),
  write: (bytes, at) => handle.write(bytes, { at }),
  flush: () => handle.flush(),
  truncate: (size) => handle.truncate(size),
});
