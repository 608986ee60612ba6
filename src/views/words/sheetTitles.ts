import type { SheetName } from '../../sheet/words.ts';

/** What each sheet is called, wherever it is named. */
export const SHEET_TITLES: Readonly<Record<SheetName, string>> = {
  placement: 'Placement',
  elevations: 'Elevations',
  mics: 'Stands and mics',
  check: 'Clearances and sign-off',
  setUp: 'Set-up list',
};
