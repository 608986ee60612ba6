import type { TextFile } from '../storage/files.ts';

/**
 * Gives a file to the user: as a download, or by the share sheet where the app is installed on a tablet whose browser does not
 * download from installed apps.
 */
export async function handOut({ name, text }: TextFile): Promise<void> {
  const file = new File([text], name, {
    type: name.endsWith('.csv') ? 'text/csv' : 'application/json',
  });
  if (installed() && touchOnly() && navigator.canShare?.({ files: [file] })) {
    await shared(file);
    return;
  }
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // Safari reads the file only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

async function shared(file: File): Promise<void> {
  try {
    await navigator.share({ files: [file] });
  } catch (error) {
    const closed = error instanceof DOMException && error.name === 'AbortError';
    if (!closed) throw error;
  }
}

const installed = (): boolean => matchMedia('(display-mode: standalone)').matches;
const touchOnly = (): boolean => !matchMedia('(any-pointer: fine)').matches;
