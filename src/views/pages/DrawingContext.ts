import type { ReactNode } from 'react';
import { createContext } from 'react';

/** The drawing of the open layout, for pages that show it. */
export const DrawingContext = createContext<ReactNode>(null);
