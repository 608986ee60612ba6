import type { LengthUnit } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import { colourWords, longNumber, longUnit } from './cellWords.ts';
import type { Table } from './toCsv.ts';

/** One cable run as far as a table shows it. */
export interface CableRow {
  readonly channel: number | null;
  readonly input: number | null;
  readonly name: string;
  /** Length of the run. */
  readonly length: Mm;
  /** The stock cables that serve it, one or several joined; empty: none that is carried reaches. */
  readonly stock: readonly Mm[];
  readonly notes: string;
}

/** The cable schedule as a table; joined cables stand as a sum: `5 + 10`. */
export function cableTable(rows: readonly CableRow[], unit: LengthUnit): Table {
  const long = longUnit(unit);
  return {
    header: [
      'Channel',
      'Box input',
      'Input colours',
      'Name',
      `Run (${long})`,
      `Stock cable (${long})`,
      'Notes',
    ],
    rows: rows.map(({ channel, input, name, length, stock, notes }) => [
      channel,
      input,
      colourWords(input),
      name,
      longNumber(length, unit),
      stockCell(stock, unit),
      notes,
    ]),
  };
}

function stockCell(stock: readonly Mm[], unit: LengthUnit): number | string {
  const lengths = stock.map((length) => longNumber(length, unit));
  const [only] = lengths;
  if (only === undefined) return 'missing';
  return lengths.length === 1 ? only : lengths.join(' + ');
}
