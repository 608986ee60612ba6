import type { Cell, Table } from '../../patch/csv/toCsv.ts';
import type { PatchTable } from '../../report/patchCsv.ts';

/** A table as it is printed. */
interface PaperTable {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A box to tick with a pen. */
const BOX = '[ ]';

/** What is not done yet, column by column: on paper it is a box to tick. */
const UNDONE: Readonly<Partial<Record<PatchTable, Readonly<Record<string, readonly Cell[]>>>>> = {
  pull: { Out: [0], Back: [0] },
  check: { Result: ['open', 'stale'] },
};

/**
 * A table for paper: what is still to be done is a box to tick, and the numbers of a column have the same decimals, so that they can be
 * compared from line to line.
 */
export function onPaper(table: PatchTable, { header, rows }: Table): PaperTable {
  const decimals = header.map((_, column) =>
    Math.max(0, ...rows.map((row) => decimalsOf(row[column] ?? null))),
  );
  return {
    header,
    rows: rows.map((row) =>
      row.map((cell, column) => {
        if (UNDONE[table]?.[header[column] ?? '']?.includes(cell)) return BOX;
        return typeof cell === 'number' ? cell.toFixed(decimals[column]) : (cell ?? '');
      }),
    ),
  };
}

const decimalsOf = (cell: Cell): number =>
  typeof cell === 'number' ? (String(cell).split('.')[1]?.length ?? 0) : 0;
