import type { Layout } from '../layout/layout.ts';
import { cableTable } from '../patch/csv/cableTable.ts';
import { checkTable, inputTable } from '../patch/csv/inputTable.ts';
import { pullTable } from '../patch/csv/pullTable.ts';
import { type Table, toCsv } from '../patch/csv/toCsv.ts';
import type { PatchReport } from './patch.ts';

/** The tables that leave the app. */
export const PATCH_TABLES = ['inputs', 'cables', 'pull', 'check'] as const;
export type PatchTable = (typeof PATCH_TABLES)[number];

/** One table of a layout's patch. */
export function patchTable(table: PatchTable, layout: Layout, patch: PatchReport): Table {
  switch (table) {
    case 'inputs':
      return inputTable(patch.rows, layout.pieces, layout.patch.splits);
    case 'cables':
      return cableTable(patch.cables, layout.box.tail, layout.units);
    case 'pull':
      return pullTable(patch.pull, patch.strike, layout);
    case 'check':
      return checkTable(patch.steps);
  }
}

/** One table as CSV by RFC 4180. */
export const patchCsv = (table: PatchTable, layout: Layout, patch: PatchReport): string =>
  toCsv(patchTable(table, layout, patch));
