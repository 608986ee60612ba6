import { createContext, useContext } from 'react';
import type { ClearSpots } from '../../session/clearing.ts';

export const ClearSpotsContext = createContext<ClearSpots | null>(null);

/** The search for clear spots, inside the workspace. */
export function useClearSpots(): ClearSpots {
  const spots = useContext(ClearSpotsContext);
  if (spots === null) throw new Error('useClearSpots needs a ClearSpotsContext around it');
  return spots;
}
