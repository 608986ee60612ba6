import type { SaveState } from '../../session/library.ts';
import { clockWords } from './timeWords.ts';

/** Whether the work is on the disk, in a few words: `Saved 14:32`, `Saving…`, `Not saved: the storage is full`. */
export function saveWords(saving: SaveState | null): string {
  if (saving === null) return 'Not saved yet';
  switch (saving.kind) {
    case 'saved':
      return `Saved ${clockWords(saving.at)}`;
    case 'saving':
      return 'Saving…';
    case 'failed':
      return `Not saved${saving.reason === 'insecure' ? ' for sure' : ''}: ${refusals[saving.reason]}`;
    case 'conflict':
      return 'Not saved: changed in another tab';
  }
}

type Refusal = Extract<SaveState, { kind: 'failed' }>['reason'];

const refusals: Readonly<Record<Refusal, string>> = {
  quota: 'the storage is full',
  unavailable: 'no storage here',
  insecure: 'the address is not secure',
  other: 'storage refused',
};

/** What a refused save means and what to do about it. */
export const refusalHelp: Readonly<Record<Refusal, string>> = {
  quota:
    'The storage of this browser is full. Export the layout to a file now, then free some space: nothing you see is lost while this page stays open.',
  unavailable:
    'This browser gives the page no storage, as in a private window. You can go on working; export the layout to a file before you close the page.',
  insecure:
    'Layouts are stored on this device, but a browser promises nothing to an address that is not secure, and starts the app only with the network. Export the layout to a file before you close the page.',
  other:
    'The browser refused to store the last change. Export the layout to a file now; saving is tried again with the next change.',
};
