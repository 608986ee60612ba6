/** Asks for a call before the next frame is drawn, and can be told not to: `requestAnimationFrame` and its cancel. */
export interface Frames {
  request(call: () => void): number;
  cancel(ticket: number): void;
}

/** Passes on at most one value per frame, the last one. */
export interface LastPerFrame<T> {
  push(value: T): void;
  /** Passes the last value on once more, in a frame, when none is waiting. */
  again(): void;
  /** Passes on at once what is waiting, and forgets the last value. */
  flush(): void;
  /** Forgets what is waiting, and the last value. */
  drop(): void;
}

export function lastPerFrame<T>(apply: (value: T) => void, frames: Frames): LastPerFrame<T> {
  let last: { readonly value: T } | null = null;
  let ticket: number | null = null;
  const pass = (): void => {
    ticket = null;
    if (last) apply(last.value);
  };
  const again = (): void => {
    if (last) ticket ??= frames.request(pass);
  };
  const drop = (): void => {
    if (ticket !== null) frames.cancel(ticket);
    ticket = null;
    last = null;
  };
  return {
    push(value) {
      last = { value };
      again();
    },
    again,
    flush() {
      if (ticket !== null && last) apply(last.value);
      drop();
    },
    drop,
  };
}

export const screenFrames: Frames = {
  request: (call) => requestAnimationFrame(call),
  cancel: (ticket) => cancelAnimationFrame(ticket),
};
