/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

/** A table to be read by other programs. Every row has as many cells as the header. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/**
 * F2 What a spreadsheet takes for the start of a formula: = + - @, tab, carriage return; and, from memory, line feed and the
 *    full-width forms of the four signs.
 */
const RUNS = /^[=+\-@\t\r\n＝＋－＠]/;

/**
 * F1 RFC 4180 allows any cell in quotation marks and demands them around comma, quotation mark, CR and LF. Tab and semicolon
 *    separate cells in some spreadsheets, and some drop white space at the ends: such cells are quoted too.
 */
const QUOTED = /[",\r\n\t;]|^\s|\s$/;

/**
 * A table as CSV by RFC 4180: comma, CRLF after every record, the header first.
 *
 * F1 Cells in quotation marks where that is needed, with quotation marks doubled.
 * F2 Text that a spreadsheet would run gets an apostrophe before it. Numbers are written as they are: they run nothing.
 *
 * @throws RangeError for a table without columns, a row of another length than the header, or a number that is not finite.
 */
export function toCsv({ header, rows }: Table): string {
  if (header.length === 0) throw new RangeError('Expected a table with at least one column');
  rows.forEach((row, index) => {
    if (row.length === header.length) return;
    throw new RangeError(
      `Row ${index + 1}: expected ${header.length} cells as in the header, not ${row.length}`,
    );
  });
  return [header, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) throw new RangeError(`Expected a finite number, not ${cell}`);
    return String(cell);
  }
  const text = RUNS.test(cell) ? `'${cell}` : cell;
  return QUOTED.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
