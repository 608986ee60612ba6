import type { Mm } from '../../units/quantity.ts';
import { line, type Mark } from '../mark.ts';
import type { Room } from './layOut.ts';
import { ASCENT, DESCENT, textWidth, wrapped } from './lettering.ts';
import { textMark } from './text.ts';

/** A table for paper: every row has as many cells as the header. */
export interface SheetTable {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Columns whose cells may be broken into lines where the paper is narrow. The others keep their width. */
  readonly broken: readonly number[];
  /** Columns of numbers, set to the right. */
  readonly numbers: readonly number[];
}

/** A table as far as it fits into a room. */
export interface SetTable {
  readonly marks: readonly Mark[];
  readonly height: Mm;
  /** How many rows found room. */
  readonly rows: number;
}

/** Sizes of tables' letters, mm, the largest first: 9 to 6.5 points. */
export const TABLE_SIZES = [3.2, 2.9, 2.6, 2.3] as const;
export const SMALLEST_TABLE = 2.3;
const LEADING = 1.22;
/** Between columns, and above and below the lines of a row. */
const GUTTER: Mm = 2.2;
const PAD_ABOVE: Mm = 0.85;
const PAD_BELOW: Mm = 0.35;
/** The least width of a column that is broken. */
const NARROWEST: Mm = 14;

/** Sets a table into a room, row by row while they fit. The header stands above whatever rows there are. */
export function setTable(table: SheetTable, room: Room, size: Mm = SMALLEST_TABLE): SetTable {
  const columns = columnsOf(table, room, size);
  const last = columns.at(-1);
  const wide = { ...room, width: last ? last.x + last.width - room.x : room.width };
  const head = setRow(table.header, columns, room.y, { size, bold: true });
  const marks: Mark[] = [...head.marks, rule(wide, room.y + head.height, 0.25)];
  let y = room.y + head.height;
  let rows = 0;
  for (const row of table.rows) {
    const set = setRow(row, columns, y, { size, bold: false });
    if (y + set.height > room.y + room.height) break;
    y += set.height;
    rows += 1;
    marks.push(...set.marks, rule(wide, y, 0.08));
  }
  return { marks, height: y - room.y, rows };
}

/** How wide a table is when nothing in it is broken. */
export const naturalWidth = (table: SheetTable, size: Mm = SMALLEST_TABLE): Mm =>
  naturalWidths(table, size).reduce((sum, width) => sum + width + GUTTER, -GUTTER);

interface Column {
  readonly x: Mm;
  readonly width: Mm;
  readonly isNumber: boolean;
}

const naturalWidths = ({ header, rows }: SheetTable, size: Mm): readonly Mm[] =>
  header.map((title, index) =>
    Math.max(textWidth(title, size, true), ...rows.map((row) => textWidth(row[index] ?? '', size))),
  );

function columnsOf(table: SheetTable, room: Room, size: Mm): readonly Column[] {
  const widths = fittedWidths(table, room.width, size);
  let x = room.x;
  return widths.map((width, index) => {
    const column = { x, width, isNumber: table.numbers.includes(index) };
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

function setRow(
  cells: readonly string[],
  columns: readonly Column[],
  y: Mm,
  { size, bold }: { readonly size: Mm; readonly bold: boolean },
) {
  const lineHeight = size * LEADING;
  // A rounding error must not break a cell that is as wide as its column.
  const lines = columns.map(({ width }, i) => wrapped(cells[i] ?? '', width + 0.01, size, bold));
  const most = Math.max(1, ...lines.map(({ length }) => length));
  const marks = columns.flatMap(({ x, width, isNumber }, i) =>
    (lines[i] ?? []).flatMap((text, k): readonly Mark[] => {
      if (text === '') return [];
      const at = { x: isNumber ? x + width : x, y: y + PAD_ABOVE + k * lineHeight + ASCENT * size };
      return [textMark(text, at, { size, bold, anchor: isNumber ? 'end' : 'start' })];
    }),
  );
  return {
    marks,
    height: PAD_ABOVE + PAD_BELOW + (most - 1) * lineHeight + (ASCENT + DESCENT) * size,
  };
}

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
