import { type RefObject, useEffect, useRef } from 'react';
import { useStable } from './useStable.ts';

/** Calls once the element with the ref has come into view, or near it. */
export function useSeen<Shown extends Element>(onSeen: () => void): RefObject<Shown | null> {
  const shown = useRef<Shown>(null);
  const seen = useStable(onSeen);
  useEffect(() => {
    if (!shown.current) return;
    const observer = new IntersectionObserver((entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      observer.disconnect();
      seen();
    });
    observer.observe(shown.current);
    return () => observer.disconnect();
  }, [seen]);
  return shown;
}
