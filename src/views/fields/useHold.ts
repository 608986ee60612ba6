import {
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  useEffect,
  useMemo,
  useRef,
} from 'react';

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

export type HoldHandlers = ReturnType<typeof handlersOf>['handlers'];

/**
 * Handlers of a button that acts once when tapped and goes on while held, all of it one press: `start`, `step` with the
 * count so far, `end` or `cancel`. Enter and Space act once each. They stay the same, whatever is held.
 */
export function useHold(hold: Hold): HoldHandlers {
  const latest = useRef(hold);
  latest.current = hold;
  const { handlers, release } = useMemo(() => handlersOf(() => latest.current), []);
  // A button that goes away while it is held must not leave the gesture open.
  useEffect(() => release, [release]);
  return handlers;
}

function handlersOf(hold: () => Hold) {
  let timer: number | undefined;
  let held = false;

  const finish = (how: 'end' | 'cancel') => {
    window.clearTimeout(timer);
    if (!held) return;
    held = false;
    hold()[how]();
  };
  const release = () => finish('end');

  const press = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0 || held) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    held = true;
    let repeats = 0;
    let count = 1;
    hold().start();
    hold().step(count);
    const again = () => {
      repeats += 1;
      count += repeats > QUICK_AFTER ? 5 : 1;
      hold().step(count);
      timer = window.setTimeout(again, NEXT_REPEAT);
    };
    timer = window.setTimeout(again, FIRST_REPEAT);
  };

  const once = (event: MouseEvent<HTMLButtonElement>) => {
    // A click that a pointer made was already taken by the press; this is one made by a key or a reading aid.
    if (event.detail !== 0) return;
    hold().start();
    hold().step(1);
    hold().end();
  };

  const handlers = {
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
  return { handlers, release };
}
