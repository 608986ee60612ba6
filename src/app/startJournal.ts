import { type CopyAnswer, copyThrough, type SecondCopy } from '../storage/journal/secondCopy.ts';
import address from './journalWorker.ts?worker&url';
import { trustedScript } from './trustedScript.ts';

/** Starts the worker that keeps the second copy. Where a browser has no file system of its own, every question is answered with that. */
export function startJournal(): SecondCopy {
  const why = missing();
  const through = copyThrough((question) => worker?.postMessage(question));
  const worker =
    why === null
      ? new Worker(trustedScript(address), { type: 'module', name: 'second copy' })
      : undefined;
  if (why !== null) through.fail(why);
  worker?.addEventListener('message', ({ data }: MessageEvent<CopyAnswer>) => through.hear(data));
  worker?.addEventListener('error', (event) => {
    through.fail(event.message === '' ? 'it could not be started' : event.message);
  });
  return through.copy;
}

function missing(): string | null {
  if (!window.isSecureContext) return 'this address is neither https nor localhost';
  if (!('locks' in navigator)) return 'this browser has no locks between tabs';
  const storage: Partial<StorageManager> = navigator.storage ?? {};
  return typeof storage.getDirectory === 'function'
    ? null
    : 'this browser gives pages no files of their own';
}
