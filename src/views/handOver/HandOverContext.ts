import { createContext, useContext } from 'react';
import type { HandOver } from '../../session/handOver.ts';

export const HandOverContext = createContext<HandOver | null>(null);

/** The ways to another tablet, on every screen. */
export function useHandOver(): HandOver {
  const handOver = useContext(HandOverContext);
  if (handOver === null) throw new Error('useHandOver needs a HandOverContext around it');
  return handOver;
}
