import type { SheetFile, TextFile } from '../storage/files.ts';
import type { LibraryFile } from '../storage/libraryFile.ts';
import { saySaved } from './newsLine.ts';

/** A file of text, or one of bytes in parts. */
type FileOut = TextFile | SheetFile | LibraryFile;

/**
 * Gives a file to the user: as a download, or by the share sheet where the app is installed on a tablet whose browser does not
 * download from installed apps; there the system itself says what became of it.
 */
export async function handOut(out: FileOut): Promise<void> {
  if (installed() && touchOnly() && canShareFiles()) return shareFile(out);
  const address = URL.createObjectURL(fileOf(out));
  const link = document.createElement('a');
  link.href = address;
  link.download = out.name;
  document.body.append(link);
  link.click();
  link.remove();
  saySaved(out.name);
  // Safari reads the file only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Whether the system has a share sheet that takes our files. */
export function canShareFiles(): boolean {
  const sample = fileOf({ name: 'layout.json', text: '{}' });
  return navigator.canShare?.({ files: [sample] }) === true;
}

/** Offers a file to the system's share sheet; closing it without a choice is no fault. */
export async function shareFile(out: FileOut): Promise<void> {
  try {
    await navigator.share({ files: [fileOf(out)] });
  } catch (error) {
    const closed = error instanceof DOMException && error.name === 'AbortError';
    if (!closed) throw error;
  }
}

function fileOf(out: FileOut): File {
  if ('parts' in out) {
    // A view of bytes that no other thread shares, which is what a file is made of.
    return new File([...out.parts] as Uint8Array<ArrayBuffer>[], out.name, {
      type: 'application/octet-stream',
    });
  }
  if ('content' in out) return new File([out.content], out.name, { type: out.type });
  const type = out.name.endsWith('.csv') ? 'text/csv' : 'application/json';
  return new File([out.text], out.name, { type });
}

const installed = (): boolean => matchMedia('(display-mode: standalone)').matches;
const touchOnly = (): boolean => !matchMedia('(any-pointer: fine)').matches;
