import type { ReactNode } from 'react';
import { createContext } from 'react';

/** The plan as the drummer sees it, for the sign-off. */
export const DrummerPlanContext = createContext<ReactNode>(null);
