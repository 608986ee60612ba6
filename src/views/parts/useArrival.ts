import { type RefObject, useEffect, useRef } from 'react';

let hasArrived = false;

/**
 * The heading of a screen, which takes the focus that went with the screen before: whoever goes by keys or reads by ear starts at the head
 * of what has come, and hears what it is. The page's first screen leaves the focus where the browser put it, and a focus that is somewhere
 * stays there.
 */
export function useArrival(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const isLost = document.activeElement === null || document.activeElement === document.body;
    if (hasArrived && isLost) heading.current?.focus({ preventScroll: true });
    hasArrived = true;
  }, []);
  return heading;
}
