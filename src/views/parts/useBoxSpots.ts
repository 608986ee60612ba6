import { createContext, useContext } from 'react';
import type { BoxSpotFinder } from '../../session/boxSearch.ts';

export const BoxSpotsContext = createContext<BoxSpotFinder | null>(null);

/** The search for box spots, inside the workspace. */
export function useBoxSpots(): BoxSpotFinder {
  const finder = useContext(BoxSpotsContext);
  if (finder === null) throw new Error('useBoxSpots needs a BoxSpotsContext around it');
  return finder;
}
