import { useEffect, useRef } from 'react';

/**
 * When what had the focus went away with the view, as the line of a list that was opened, the focus goes to the title of the
 * new view or to the tab. Elsewhere, as on the plan, it stays.
 */
export function useFocusInView(view: string): void {
  const before = useRef(view);
  useEffect(() => {
    if (before.current === view) return;
    before.current = view;
    if (document.activeElement !== document.body && document.activeElement !== null) return;
    const title = document.querySelector<HTMLElement>('.panel-view .details-title h2');
    const tab = document.querySelector<HTMLElement>('.tab[aria-selected="true"]');
    (title ?? tab)?.focus({ preventScroll: true });
  }, [view]);
}
