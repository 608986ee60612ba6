import { createContext } from 'react';

/** What is written into the history entry that stands for something over the screen. */
const OVER = { over: true };
const isOver = (state: unknown): boolean =>
  typeof state === 'object' && state !== null && 'over' in state;

export interface BackSteps {
  /** Something opened over the screen, and Back is to close it. Returns what to call when it is gone. */
  over(close: () => void): () => void;
  /** The browser went to another entry. True when that was no step to another address: the one that is wanted may have to be written. */
  moved(): boolean;
  /** Writes the address of another screen; nothing while an entry is being left, whose {@link moved} is still to come. */
  write(address: string): void;
}

/**
 * Back closes what lies over a screen before it leaves the screen. Rules:
 * - K1 While a dialog is open there is one entry more, with the same address, for Back to leave. It closes the topmost.
 * - K2 When no dialog is open any more and that entry is still there, it is left at once: Back is then one step, however the browser takes
 *   it. An address that the closing dialog leads to is written over it instead.
 * - K3 The browser leaves an entry a little later than it is told to. A dialog that opens meanwhile gets its entry then.
 */
export function createBackSteps(
  browser: Pick<History, 'state' | 'pushState' | 'replaceState' | 'back'>,
): BackSteps {
  const closers: (() => void)[] = [];
  let isLeaving = false;
  // Of a dialog that was open when the page was loaded again.
  if (isOver(browser.state)) browser.replaceState(null, '');
  const setUp = () => {
    if (!isOver(browser.state)) browser.pushState(OVER, '');
  };
  const leaveUnused = () => {
    if (isLeaving || closers.length > 0 || !isOver(browser.state)) return;
    isLeaving = true;
    browser.back();
  };
  return {
    over(close) {
      if (!isLeaving) setUp();
      closers.push(close);
      return () => {
        const at = closers.indexOf(close);
        if (at < 0) return;
        closers.splice(at, 1);
        // Not at once: an address that is written, or a dialog that opens, in the same breath takes the entry over.
        queueMicrotask(leaveUnused);
      };
    },
    moved() {
      if (isLeaving) {
        isLeaving = false;
        if (closers.length > 0) setUp();
        return true;
      }
      const close = closers.pop();
      if (close) {
        if (closers.length > 0) setUp();
        close();
        return true;
      }
      // Forward, onto the entry of a dialog that is gone: there is nothing new to see.
      const isUnused = isOver(browser.state);
      leaveUnused();
      return isUnused;
    },
    write(address) {
      if (isLeaving) return;
      if (isOver(browser.state)) browser.replaceState(null, '', address);
      else browser.pushState(null, '', address);
    },
  };
}

/** The steps of the page's own history; none where nothing keeps addresses. */
export const BackStepsContext = createContext<BackSteps | null>(null);
