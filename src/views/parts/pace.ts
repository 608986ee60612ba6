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
 * Y1. While it may wait, every second change is shown at once, and of the others none later than two frames after it came.
 * Y2. When it need not wait any more, it is shown at once.
 * Y3. All who read it read the same.
 */
export function createPace<Value>(followed: Followed<Value>, frames: PanelFrames): Paced<Value> {
  const hearers = new Set<() => void>();
  let shown: Value;
  let heard: Value;
  let skipped = true;
  let waiting: number | undefined;
  let stop = (): void => {};

  const show = (value: Value): void => {
    if (waiting !== undefined) frames.cancel(waiting);
    waiting = undefined;
    skipped = false;
    if (value === shown) return;
    shown = value;
    for (const hear of [...hearers]) hear();
  };
  /** The first frame begins before what changes in it; the second one is the last in which it may still be shown. */
  const showInTwoFrames = (): void => {
    waiting ??= frames.request(() => {
      waiting = frames.request(() => show(followed.read()));
    });
  };
  const hear = (): void => {
    const value = followed.read();
    // Told of something else that changed beside it, it is no change of its own.
    const isNew = value !== heard;
    heard = value;
    if (value === shown) return;
    if (!followed.mayWait(value) || (isNew && skipped)) {
      show(value);
      return;
    }
    if (!isNew) return;
    skipped = true;
    showInTwoFrames();
  };
  return {
    subscribe(listener) {
      if (hearers.size === 0) {
        shown = followed.read();
        heard = shown;
        stop = followed.subscribe(hear);
      }
      hearers.add(listener);
      return () => {
        hearers.delete(listener);
        if (hearers.size > 0) return;
        stop();
        if (waiting !== undefined) frames.cancel(waiting);
        waiting = undefined;
        skipped = true;
      };
    },
    snapshot: () => (hearers.size === 0 ? followed.read() : shown),
  };
}
