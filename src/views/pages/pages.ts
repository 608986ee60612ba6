import { type ComponentType, lazy } from 'react';
import { PAGE_NAMES, type PageName } from '../../session/pages.ts';

/** One page over the open layout. It is loaded when it is first shown. */
export interface PageEntry {
  readonly title: string;
  /** What one does there, in a line of the menu. */
  readonly about: string;
  readonly Page: ComponentType;
}

const entries: Readonly<Record<PageName, PageEntry>> = {
  'next-venue': {
    title: 'Next venue',
    about: 'The same kit and mics on another deck, with another box and other air',
    Page: lazy(async () => ({
      default: (await import('./nextVenue/NextVenuePage.tsx')).NextVenuePage,
    })),
  },
  changed: {
    title: 'What changed',
    about: 'This venue set beside the one before: findings, cables, stock, delays, deck',
    Page: lazy(async () => ({
      default: (await import('./nextVenue/ChangedPage.tsx')).ChangedPage,
    })),
  },
  'sign-off': {
    title: 'Sign-off',
    about: 'Turn the tablet to the drummer: fine, or move it',
    Page: lazy(async () => ({ default: (await import('./signOff/SignOffPage.tsx')).SignOffPage })),
  },
  history: {
    title: 'History',
    about: 'Earlier points of this layout: look, compare, bring back',
    Page: lazy(async () => ({ default: (await import('../history/HistoryPage.tsx')).HistoryPage })),
  },
  sheets: {
    title: 'Sheets',
    about: 'Plan, elevations, tables and sign-off on paper: print, PDF, SVG, PNG, DXF',
    Page: lazy(async () => ({ default: (await import('../sheets/SheetsPage.tsx')).SheetsPage })),
  },
  'set-up': {
    title: 'Set up',
    about: 'Place everything again, step by step, with a tape',
    Page: lazy(async () => ({ default: (await import('../setUp/SetUpPage.tsx')).SetUpPage })),
  },
  'hand-over': {
    title: 'Hand over',
    about: 'Give this layout to another tablet',
    Page: lazy(async () => ({
      default: (await import('../handOver/HandOverPage.tsx')).HandOverPage,
    })),
  },
};

export const pageOf = (name: PageName): PageEntry => entries[name];

/** In the order of the menu. */
export const pagesInOrder = PAGE_NAMES.map((name) => ({ name, ...entries[name] }));
