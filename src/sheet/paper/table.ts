import type { Mm } from '../../units/quantity.ts';
import { line, type Mark } from '../mark.ts';
import type { Room } from './layOut.ts';
import { ASCENT, DESCENT, textWidth, wrapped } from './lettering.ts';
import { textMark } from './text.ts';

/**
 * A table for paper: every row has as many cells as the header, or is one cell, which is the heading of the rows below it. A cell's text begins a
 * line anew after each line break in it.
 */
export interface SheetTable {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Columns whose cells may be broken into lines where the paper is narrow. The others keep their width. */
  readonly broken: readonly number[];
  /** Columns of numbers, set to the right. */
  readonly numbers: readonly number[];
  /** Columns in bold, by which a row is found. */
  readonly strong?: readonly number[];
  /** The cell of one column begins at another before it in rows where all cells between them are empty. */
  readonly spread?: { readonly from: number; readonly to: number };
}

/** A table as far as it fits into a room. */
export interface SetTable {
  readonly marks: readonly Mark[];
  readonly height: Mm;
  /** How many rows found room. */
  readonly rows: number;
}

/** Sizes of tables' letters, mm, the largest first: 9 to 8 points. Smaller ones can't be read on a dark stage: what finds no room goes on, on the next page. */
export const TABLE_SIZES = [3.2, 3, 2.8] as const;
export const SMALLEST_TABLE = 2.8;
const LEADING = 1.22;
/** Between columns. */
const GUTTER: Mm = 2.2;
/** Above and below the lines of a row, in parts of the letters' size. */
const PAD_ABOVE = 0.23;
const PAD_BELOW = 0.09;
/** Above a heading among the rows. */
const OVER: Mm = 1.4;
/** The least width of a column that is broken. */
const NARROWEST: Mm = 14;

/** Sets a table into a room, row by row while they fit. The header stands above whatever rows there are. */
export function setTable(table: SheetTable, room: Room, size: Mm = SMALLEST_TABLE): SetTable {
  const columns = columnsOf(table, room, size);
  const wide = { ...room, width: widthOf(columns, room) };
  const head = setRow(table.header, columns.map(bold), room.y, size);
  const marks: Mark[] = [...head.marks, rule(wide, room.y + head.height, 0.25)];
  let y = room.y + head.height;
  let rows = 0;
  for (const [index, row] of table.rows.entries()) {
    const isHeading = isHeadingIn(table, row);
    const own = columnsIn(row, columns, { table, room });
    const above = isHeading ? OVER : 0;
    const set = setRow(row, own, y + above, size);
    const below = isHeading ? table.rows[index + 1] : undefined;
    // A heading stays with what it is of.
    const follows = below
      ? setRow(below, columnsIn(below, columns, { table, room }), y, size).height
      : 0;
    const height = above + set.height;
    if (y + height + follows > room.y + room.height) break;
    y += height;
    rows += 1;
    marks.push(...set.marks, rule(wide, y, 0.08));
  }
  return { marks, height: y - room.y, rows };
}

/**
 * W2 Rows taller than half of what a room has under the header are cut into rows of as many of their lines as that takes: in a room of its own every
 *    row then fits under its heading, and none is lost however much was written into it. The same table when none is as tall.
 */
export function cutToRoom(table: SheetTable, room: Room, size: Mm = SMALLEST_TABLE): SheetTable {
  const columns = columnsOf(table, room, size);
  const head = setRow(table.header, columns.map(bold), room.y, size);
  const half = (room.height - head.height) / 2 - OVER;
  const most = Math.max(1, Math.floor((half - rowHeight(1, size)) / (size * LEADING)) + 1);
  const rows = table.rows.flatMap((row) => {
    const lines = linesOf(row, columnsIn(row, columns, { table, room }), size);
    const parts = Math.ceil(Math.max(1, ...lines.map(({ length }) => length)) / most);
    if (parts === 1) return [row];
    return Array.from({ length: parts }, (_, part) =>
      row.map((_cell, i) => (lines[i] ?? []).slice(part * most, (part + 1) * most).join('\n')),
    );
  });
  // What is cut may make its column narrower, and so be broken anew.
  return rows.length === table.rows.length ? table : cutToRoom({ ...table, rows }, room, size);
}

/** The rows from one on, as a table of their own, under the heading that the first of them stands under; null when there are none. */
export function restOf(table: SheetTable, from: number): SheetTable | null {
  const { rows } = table;
  if (from >= rows.length) return null;
  const isHeading = (row: readonly string[]): boolean => isHeadingIn(table, row);
  const rest = rows.slice(from);
  const heading = rows.slice(0, from).findLast(isHeading);
  const [first] = rest;
  // Only with a row taken away: a table must become shorter from page to page.
  if (heading === undefined || from < 2 || (first && isHeading(first)))
    return { ...table, rows: rest };
  return { ...table, rows: [heading, ...rest] };
}

/** How wide a table is when nothing in it is broken. */
export const naturalWidth = (table: SheetTable, size: Mm = SMALLEST_TABLE): Mm =>
  naturalWidths(table, size).reduce((sum, width) => sum + width + GUTTER, -GUTTER);

interface Column {
  readonly x: Mm;
  readonly width: Mm;
  readonly isNumber: boolean;
  readonly isStrong: boolean;
}

/** Whether a row is the heading of those below it. */
const isHeadingIn = ({ header }: SheetTable, row: readonly string[]): boolean =>
  row.length === 1 && header.length > 1;

const widthOf = (columns: readonly Column[], room: Room): Mm => {
  const last = columns.at(-1);
  return last ? last.x + last.width - room.x : room.width;
};

/** The columns as a row has them: a heading has one across all of them. */
function columnsIn(
  row: readonly string[],
  columns: readonly Column[],
  { table, room }: { readonly table: SheetTable; readonly room: Room },
): readonly Column[] {
  if (!isHeadingIn(table, row)) return spreadIn(row, columns, table);
  return [{ x: room.x, width: widthOf(columns, room), isNumber: false, isStrong: true }];
}

/** The columns as a row of cells has them: a cell that may spread takes the room of the empty ones before it. */
function spreadIn(
  cells: readonly string[],
  columns: readonly Column[],
  { spread }: SheetTable,
): readonly Column[] {
  const [first, last] = spread ? [columns[spread.from], columns[spread.to]] : [];
  if (!spread || !first || !last) return columns;
  if (cells.slice(spread.from, spread.to).some((cell) => cell !== '')) return columns;
  const wide = { ...last, x: first.x, width: last.x + last.width - first.x };
  return columns.map((column, i) => (i === spread.to ? wide : column));
}

const bold = (column: Column): Column => ({ ...column, isStrong: true });

function naturalWidths({ header, rows, strong = [] }: SheetTable, size: Mm): readonly Mm[] {
  const whole = rows.filter((row) => row.length > 1 || header.length === 1);
  return header.map((title, index) => {
    const cells = whole.flatMap((row) => (row[index] ?? '').split('\n'));
    const widths = cells.map((cell) => textWidth(cell, size, strong.includes(index)));
    return widths.reduce((most, width) => Math.max(most, width), textWidth(title, size, true));
  });
}

function columnsOf(table: SheetTable, room: Room, size: Mm): readonly Column[] {
  const widths = fittedWidths(table, room.width, size);
  let x = room.x;
  return widths.map((width, index) => {
    const [isNumber, isStrong] = [table.numbers.includes(index), table.strong?.includes(index)];
    const column = { x, width, isNumber, isStrong: isStrong ?? false };
    x += width + GUTTER;
    return column;
  });
}

/**
 * W1 Where the room is wide enough no cell is broken. Else the broken columns share what the others leave, the widest giving way
 *    first; where even that is too little all columns shrink alike.
 */
function fittedWidths(table: SheetTable, width: Mm, size: Mm): readonly Mm[] {
  const natural = naturalWidths(table, size);
  const room = width - GUTTER * (natural.length - 1);
  const fixed = natural.reduce((sum, w, i) => (table.broken.includes(i) ? sum : sum + w), 0);
  const left = room - fixed;
  const flexible = natural.filter((_, i) => table.broken.includes(i));
  if (left < NARROWEST * flexible.length) {
    const all = natural.reduce((sum, w) => sum + w, 0);
    return natural.map((w) => w * Math.min(1, room / all));
  }
  const cap = sharedCap(flexible, left);
  return natural.map((w, i) => (table.broken.includes(i) ? Math.min(w, cap) : w));
}

/** The width at which all wider columns are cut so that together they take no more than the room. */
function sharedCap(widths: readonly Mm[], room: Mm): Mm {
  let rest = room;
  const sorted = widths.toSorted((a, b) => a - b);
  for (const [index, width] of sorted.entries()) {
    const share = rest / (sorted.length - index);
    if (width > share) return share;
    rest -= width;
  }
  return Number.POSITIVE_INFINITY;
}

function setRow(cells: readonly string[], columns: readonly Column[], y: Mm, size: Mm) {
  const lineHeight = size * LEADING;
  const lines = linesOf(cells, columns, size);
  const most = Math.max(1, ...lines.map(({ length }) => length));
  const marks = columns.flatMap(({ x, width, isNumber, isStrong }, i) =>
    (lines[i] ?? []).flatMap((text, k): readonly Mark[] => {
      if (text === '') return [];
      const at = {
        x: isNumber ? x + width : x,
        y: y + k * lineHeight + (PAD_ABOVE + ASCENT) * size,
      };
      return [textMark(text, at, { size, bold: isStrong, anchor: isNumber ? 'end' : 'start' })];
    }),
  );
  return { marks, height: rowHeight(most, size) };
}

/** The lines of each cell. A rounding error must not break a cell that is as wide as its column. */
const linesOf = (
  cells: readonly string[],
  columns: readonly Column[],
  size: Mm,
): readonly (readonly string[])[] =>
  columns.map(({ width, isStrong }, i) =>
    (cells[i] ?? '').split('\n').flatMap((text) => wrapped(text, width + 0.01, size, isStrong)),
  );

const rowHeight = (lines: number, size: Mm): Mm =>
  (lines - 1) * size * LEADING + (PAD_ABOVE + ASCENT + DESCENT + PAD_BELOW) * size;

const rule = ({ x, width }: Room, y: Mm, thickness: Mm): Mark => ({
  kind: 'line',
  layer: 'FRAME',
  points: [
    { x, y },
    { x: x + width, y },
  ],
  closed: false,
  look: line(thickness, 0.4),
});
