import { useLayoutEffect } from 'react';
import { useSession } from '../../session/session.ts';

/** Puts the chosen theme on the page's root, where the style sheet looks for it. */
export function useRootTheme(): void {
  const theme = useSession((state) => state.preferences.theme);
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
}
