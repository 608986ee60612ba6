import { type RefObject, useEffect, useState } from 'react';
import type { ScreenSize } from './view.ts';

const nothing: ScreenSize = { width: 0, height: 0 };

/** The size of an element, kept up to date, in whole px. */
export function useSizeOf(element: RefObject<HTMLElement | null>): ScreenSize {
  const [size, setSize] = useState(nothing);
  useEffect(() => {
    const observed = element.current;
    if (!observed) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const { width, height } = entry.contentRect;
      setSize({ width: Math.floor(width), height: Math.floor(height) });
    });
    observer.observe(observed);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
