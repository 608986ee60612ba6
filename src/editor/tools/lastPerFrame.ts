/** Asks for a call before the next frame is drawn, and can be told not to: `requestAnimationFrame` and its cancel. */
export interface Frames {
  request(call: () => void): number;
  cancel(ticket: number): void;
}

/** Passes on at most one value per frame, the last one. */
export interface LastPerFrame<T> {
  push(value: T): void;
  /** Passes on at once what is waiting. */
  flush(): void;
  /** Forgets what is waiting. */
  drop(): void;
}

export function lastPerFrame<T>(apply: (value: T) => void, frames: Frames): LastPerFrame<T> {
  let waiting: { readonly value: T; readonly ticket: number } | null = null;
  const take = (): void => {
    const due = waiting;
    waiting = null;
    if (due) apply(due.value);
  };
  return {
    push(value) {
      waiting = { value, ticket: waiting?.ticket ?? frames.request(take) };
    },
    flush() {
      if (waiting) frames.cancel(waiting.ticket);
      take();
    },
    drop() {
      if (waiting) frames.cancel(waiting.ticket);
      waiting = null;
    },
  };
}

export const screenFrames: Frames = {
  request: (call) => requestAnimationFrame(call),
  cancel: (ticket) => cancelAnimationFrame(ticket),
};
