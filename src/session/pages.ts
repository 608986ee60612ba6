/** Pages that take the whole screen over an open layout, by the last part of their address. */
export const PAGE_NAMES = [
  'sign-off',
  'next-venue',
  'changed',
  'sheets',
  'set-up',
  'history',
  'hand-over',
] as const;
export type PageName = (typeof PAGE_NAMES)[number];

export const isPageName = (text: string): text is PageName =>
  PAGE_NAMES.some((name) => name === text);
