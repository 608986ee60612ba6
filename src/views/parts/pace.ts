/** How the next frames of the screen are asked for. */
export interface PanelFrames {
  request(callback: () => void): number;
  cancel(request: number): void;
}

/** What is followed: a value, and whether it is changing in every frame. */
export interface Followed<Value> {
  read(): Value;
  /** Whether it may be shown a little later. */
  mayWait(value: Value): boolean;
  subscribe(hear: () => void): () => void;
}

/** A source for React's `useSyncExternalStore`. */
export interface Paced<Value> {
  subscribe(hear: () => void): () => void;
  snapshot(): Value;
}

/**
 * Follows a value that changes in every frame at half the pace: beside the drawing, which is redrawn in every frame, nobody reads
 * numbers that fast, and a panel of them costs as much as the drawing.
 *
 * Y1. While it may wait, a change is shown in the frame after it came, so that the frame that drew it is not made longer; between two
 *     frames that show something lies one that does not. What is shown is at most two frames old.
 * Y2. When it need not wait any more, it is shown at once.
 * Y3. All who read it read the same.
 */
export function createPace<Value>(followed: Followed<Value>, frames: PanelFrames): Paced<Value> {
  const hearers = new Set<() => void>();
  let shown: Value;
  let waiting: number | undefined;
  let stop = (): void => {};

  const isBehind = (): boolean => followed.read() !== shown;
  const show = (value: Value): void => {
    if (value === shown) return;
    shown = value;
    for (const hear of [...hearers]) hear();
  };
  const wait = (next: () => void): void => {
    waiting = frames.request(() => {
      waiting = undefined;
      next();
    });
  };
  const showNext = (): void => {
    wait(() => {
      show(followed.read());
      wait(() => isBehind() && showNext());
    });
  };
  const forget = (): void => {
    if (waiting !== undefined) frames.cancel(waiting);
    waiting = undefined;
  };
  const hear = (): void => {
    if (!isBehind()) return;
    if (!followed.mayWait(followed.read())) {
      forget();
      show(followed.read());
    } else if (waiting === undefined) showNext();
  };
  return {
    subscribe(listener) {
      if (hearers.size === 0) {
        shown = followed.read();
        stop = followed.subscribe(hear);
      }
      hearers.add(listener);
      return () => {
        hearers.delete(listener);
        if (hearers.size > 0) return;
        stop();
        forget();
      };
    },
    snapshot: () => (hearers.size === 0 ? followed.read() : shown),
  };
}
