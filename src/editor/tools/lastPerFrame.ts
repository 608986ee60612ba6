/** Asks for a call before the next frame is drawn, and can be told not to: `requestAnimationFrame` and its cancel. */
export interface Frames {
  request(call: () => void): number;
  cancel(ticket: number): void;
}

/** Passes on at most one value per frame, the last one. */
export interface LastPerFrame<T> {
  push(value: T): void;
  /** Passes on at once what is waiting, to another taker than in a frame. */
  flush(taker: (value: T) => void): void;
  /** Forgets what is waiting. */
  drop(): void;
}

export function lastPerFrame<T>(apply: (value: T) => void, frames: Frames): LastPerFrame<T> {
  let waiting: { readonly value: T; readonly ticket: number } | null = null;
  const take = (taker: (value: T) => void): void => {
    const due = waiting;
    waiting = null;
    if (due) taker(due.value);
  };
  return {
    push(value) {
      waiting = { value, ticket: waiting?.ticket ?? frames.request(() => take(apply)) };
    },
    flush(taker) {
      if (waiting) frames.cancel(waiting.ticket);
      take(taker);
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
