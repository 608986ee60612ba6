import { createContext } from 'react';

/** What is written into the history entry that stands for something over the screen. */
const OVER = { over: true };
const isOver = (state: unknown): boolean =>
  typeof state === 'object' && state !== null && 'over' in state;

export interface BackSteps {
  /** Something opened over the screen, and Back is to close it. Returns what to call when it is gone. */
  over(close: () => void): () => void;
  /** The browser went to another entry. True when that was no step to another address. */
  moved(): boolean;
  /** Writes the address of another screen. */
  write(address: string): void;
}

/**
 * Back closes what lies over a screen before it leaves the screen. Rules:
 * - K1 While a dialog is open there is one entry more, with the same address, for Back to leave. It closes the topmost.
 * - K2 A dialog that is closed by its own buttons leaves that entry behind unused: taking it back would be a step that comes later than
 *   the next address. The next dialog uses it, the next address is written over it.
 * - K3 Back from an unused entry shows nothing new, so it goes on by one.
 */
export function createBackSteps(
  browser: Pick<History, 'state' | 'pushState' | 'replaceState' | 'back'>,
): BackSteps {
  const closers: (() => void)[] = [];
  let spare = isOver(browser.state);
  const setUp = () => {
    if (!spare) browser.pushState(OVER, '');
    spare = true;
  };
  return {
    over(close) {
      setUp();
      closers.push(close);
      return () => {
        const at = closers.indexOf(close);
        if (at >= 0) closers.splice(at, 1);
      };
    },
    moved() {
      const leftSpare = spare;
      spare = isOver(browser.state);
      const close = closers.pop();
      if (close) {
        if (closers.length > 0) setUp();
        close();
        return true;
      }
      if (leftSpare && !spare) browser.back();
      return leftSpare !== spare;
    },
    write(address) {
      if (spare) browser.replaceState(null, '', address);
      else browser.pushState(null, '', address);
      spare = false;
    },
  };
}

/** The steps of the page's own history; none where nothing keeps addresses. */
export const BackStepsContext = createContext<BackSteps | null>(null);
