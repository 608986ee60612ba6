/** How long a button that leads on takes no further tap, ms: the two taps of a double tap are closer together. */
export const TAP_GAP = 400;

/** Lets a tap through unless it follows hard on the last one, or on the step that the last one led to. Times in ms, of one clock. */
export interface TapGuard {
  /** Whether the tap made at this time counts. */
  readonly tap: (time: number) => boolean;
  /** Another step is shown since this time. Only after a tap that counted is it news. */
  readonly shown: (time: number) => void;
}

/**
 * A guard against taps on what has not been read yet. A tap that does not count makes the wait no shorter: a key that is held down
 * counts once.
 */
export function createTapGuard(): TapGuard {
  let quietUntil = Number.NEGATIVE_INFINITY;
  let isLedOn = false;
  return {
    tap(time) {
      const counts = time >= quietUntil;
      quietUntil = Math.max(quietUntil, time + TAP_GAP);
      if (counts) isLedOn = true;
      return counts;
    },
    shown(time) {
      if (isLedOn) quietUntil = Math.max(quietUntil, time + TAP_GAP);
      isLedOn = false;
    },
  };
}
