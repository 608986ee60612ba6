import { type SyntheticEvent, useLayoutEffect, useMemo, useRef } from 'react';

/** How long a view takes no tap after it came, ms: the second half of a double tap on what was there before. */
const QUIET = 350;

/** Handlers that keep a view from being tapped before it can be read. A key's click counts: it goes where the focus is. */
export function useQuietAtFirst(view: string) {
  const since = useRef(Number.NEGATIVE_INFINITY);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the view that counts
  useLayoutEffect(() => {
    since.current = performance.now();
  }, [view]);
  return useMemo(() => {
    const drop = (event: SyntheticEvent<HTMLElement, UIEvent>): void => {
      const isKey = event.type === 'click' && event.nativeEvent.detail === 0;
      if (isKey || event.timeStamp - since.current >= QUIET) return;
      event.preventDefault();
      event.stopPropagation();
    };
    return { onPointerDownCapture: drop, onMouseDownCapture: drop, onClickCapture: drop };
  }, []);
}
