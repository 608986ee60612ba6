import type { PatchTable } from '../../report/patchCsv.ts';

export const TABLE_NAMES: Readonly<Record<PatchTable, string>> = {
  inputs: 'Input list',
  cables: 'Cable schedule',
  pull: 'Pull list',
  check: 'Line check',
};
