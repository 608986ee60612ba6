import { createContext, useContext } from 'react';
import type { LibraryActions } from '../../session/library.ts';

export const ActionsContext = createContext<LibraryActions | null>(null);

/** What the library can be asked for, inside the workspace. */
export function useActions(): LibraryActions {
  const actions = useContext(ActionsContext);
  if (actions === null) throw new Error('useActions needs an ActionsContext around it');
  return actions;
}
