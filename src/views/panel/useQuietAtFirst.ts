import { type SyntheticEvent, useLayoutEffect, useMemo, useRef } from 'react';

/** How long after a view came a tap can be the second half of the double tap that opened it, ms. */
const QUIET = 350;
/** How far apart the two halves of a double tap lie at most, px. */
const SAME_SPOT = 24;

type Tap = SyntheticEvent<HTMLElement, MouseEvent>;

/**
 * Handlers that keep the second half of a double tap out of the view that its first half opened: a tap right after the view came, where the one
 * before it was. A key's click counts: it goes where the focus is.
 */
export function useQuietAtFirst(view: string) {
  const since = useRef(Number.NEGATIVE_INFINITY);
  const last = useRef<MouseEvent | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the view that counts
  useLayoutEffect(() => {
    since.current = performance.now();
  }, [view]);
  return useMemo(() => {
    const isSecond = ({ timeStamp, nativeEvent: { clientX, clientY } }: Tap): boolean =>
      timeStamp - since.current < QUIET &&
      last.current !== null &&
      Math.hypot(clientX - last.current.clientX, clientY - last.current.clientY) <= SAME_SPOT;
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
