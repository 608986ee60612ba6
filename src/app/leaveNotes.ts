import { readLayout, writeLayout } from '../layout/read.ts';
import type { Unstored } from './autosave.ts';

const PREFIX = 'strokespace.left.';

/**
 * Notes of what pages could not store before they went away. A page that is closed or loaded again gets no time to wait for the
 * database; a note is written in one step, and the next start stores what it holds. A note never counts as saved.
 */
export interface LeaveNotes {
  /** Writes this page's note; null takes it back. */
  leave(unstored: Unstored | null): void;
  /** Gives every note to `store`, and forgets those that it has dealt with. What can't be read is left where it is. */
  takeUp(store: (unstored: Unstored) => Promise<boolean>): Promise<void>;
}

/** @param ownName Names this page's note among those of other pages. */
export function leaveNotes(storage: () => Storage, ownName: string): LeaveNotes {
  const key = `${PREFIX}${ownName}`;
  return {
    leave(unstored) {
      try {
        if (unstored === null) storage().removeItem(key);
        else storage().setItem(key, textOf(unstored));
      } catch {
        // Refused or full: then only the database can keep it.
      }
    },
    async takeUp(store) {
      for (const [name, text] of notesIn(storage)) {
        const unstored = read(text);
        if (unstored !== null && (await store(unstored))) storage().removeItem(name);
      }
    },
  };
}

/** The revision on the first line, then the layout's file. */
const textOf = ({ layout, revision }: Unstored): string => `${revision}\n${writeLayout(layout)}`;

function read(text: string): Unstored | null {
  const [first = ''] = text.split('\n', 1);
  const found = readLayout(text.slice(first.length + 1));
  return found.ok && /^\d{1,15}$/.test(first)
    ? { layout: found.layout, revision: Number(first) }
    : null;
}

function notesIn(storage: () => Storage): (readonly [name: string, text: string])[] {
  try {
    const box = storage();
    const names = Array.from({ length: box.length }, (_, index) => box.key(index) ?? '');
    return names
      .filter((name) => name.startsWith(PREFIX))
      .map((name) => [name, box.getItem(name) ?? ''] as const);
  } catch {
    return [];
  }
}
