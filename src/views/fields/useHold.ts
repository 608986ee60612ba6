import { type KeyboardEvent, type MouseEvent, type PointerEvent, useEffect, useRef } from 'react';

/** Ms from the press to the first repeat, then between repeats; after `QUICK_AFTER` repeats each counts fivefold. */
const FIRST_REPEAT = 420;
const NEXT_REPEAT = 90;
const QUICK_AFTER = 12;

export interface Hold {
  start(): void;
  /** So many steps since the press. */
  step(count: number): void;
  end(): void;
  /** The press turned out to be a scroll: what it did is taken back. */
  cancel(): void;
}

/**
 * Handlers of a button that acts once when tapped and goes on while held, all of it one press: `start`, `step` with the
 * count so far, `end` or `cancel`. Enter and Space act once each.
 */
export function useHold(hold: Hold) {
  const latest = useRef(hold);
  latest.current = hold;
  const timer = useRef<number | undefined>(undefined);
  const held = useRef(false);

  const finish = (how: 'end' | 'cancel') => {
    window.clearTimeout(timer.current);
    if (!held.current) return;
    held.current = false;
    latest.current[how]();
  };
  const release = () => finish('end');

  // A button that goes away while it is held must not leave the gesture open.
  const releaseLatest = useRef(release);
  releaseLatest.current = release;
  useEffect(() => () => releaseLatest.current(), []);

  const press = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0 || held.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = true;
    let repeats = 0;
    let count = 1;
    latest.current.start();
    latest.current.step(count);
    const again = () => {
      repeats += 1;
      count += repeats > QUICK_AFTER ? 5 : 1;
      latest.current.step(count);
      timer.current = window.setTimeout(again, NEXT_REPEAT);
    };
    timer.current = window.setTimeout(again, FIRST_REPEAT);
  };

  const once = (event: MouseEvent<HTMLButtonElement>) => {
    // A click that a pointer made was already taken by the press; this is one made by a key or a reading aid.
    if (event.detail !== 0) return;
    latest.current.start();
    latest.current.step(1);
    latest.current.end();
  };

  return {
    onPointerDown: press,
    onPointerUp: release,
    onPointerCancel: () => finish('cancel'),
    onLostPointerCapture: release,
    onClick: once,
    onContextMenu: (event: MouseEvent<HTMLButtonElement>) => event.preventDefault(),
    onKeyDown: (event: KeyboardEvent<HTMLButtonElement>) => {
      if (event.repeat && (event.key === 'Enter' || event.key === ' ')) event.preventDefault();
    },
  };
}
