import { session } from '../session/session.ts';

const KEY = 'strokespace.layouts';

/**
 * Notices a browser that has cleared its storage by itself: how many layouts there are is kept apart from them. Calls back with
 * how many there were, when the first list of this page is empty though nobody deleted them.
 */
export function watchForLoss(storage: () => Storage, onLoss: (before: number) => void): void {
  let before = countIn(storage);
  session.subscribe(({ library, saving }, last) => {
    if (library === null || library === last.library || saving?.kind === 'failed') return;
    if (before > 0 && library.length === 0) onLoss(before);
    before = 0;
    try {
      storage().setItem(KEY, String(library.length));
    } catch {
      // Then a loss goes unnoticed; the list says that it is empty.
    }
  });
}

function countIn(storage: () => Storage): number {
  try {
    const count = Number(storage().getItem(KEY));
    return Number.isInteger(count) && count > 0 ? count : 0;
  } catch {
    return 0;
  }
}
