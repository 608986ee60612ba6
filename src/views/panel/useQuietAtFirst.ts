import { type SyntheticEvent, useLayoutEffect, useMemo, useRef } from 'react';

/** How long after the first half of a double tap its second half comes at most, ms. */
const QUIET = 350;
/** How far apart the two halves of a double tap lie at most, px. */
const SAME_SPOT = 24;

type Tap = SyntheticEvent<HTMLElement, MouseEvent>;

/**
 * Handlers that keep the second half of a double tap out of the view that its first half opened: a tap right after the one before
 * which the view was another, and where that one was. A key's click counts: it goes where the focus is.
 */
export function useQuietAtFirst(view: string) {
  const last = useRef<MouseEvent | null>(null);
  /** The tap that opened the view, if one did. */
  const opening = useRef<MouseEvent | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the view that counts
  useLayoutEffect(() => {
    opening.current = last.current;
    last.current = null;
  }, [view]);
  return useMemo(() => {
    // By the fingers' own times: however long the view took to come.
    const isSecond = ({ timeStamp, nativeEvent: { clientX, clientY } }: Tap): boolean =>
      opening.current !== null &&
      timeStamp - opening.current.timeStamp < QUIET &&
      Math.hypot(clientX - opening.current.clientX, clientY - opening.current.clientY) <= SAME_SPOT;
    const drop = (event: Tap): boolean => {
      const isKey = event.type === 'click' && event.nativeEvent.detail === 0;
      if (isKey || !isSecond(event)) return false;
      event.preventDefault();
      event.stopPropagation();
      return true;
    };
    return {
      onPointerDownCapture: drop,
      onMouseDownCapture: drop,
      onClickCapture(event: Tap): void {
        if (!drop(event)) last.current = event.nativeEvent;
      },
    };
  }, []);
}
