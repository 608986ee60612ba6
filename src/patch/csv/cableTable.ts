import type { LengthUnit } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import { colourWords, longNumber, longUnit } from './cellWords.ts';
import type { Table } from './toCsv.ts';

/** One cable run as far as a table shows it. */
export interface CableRow {
  readonly channel: number | null;
  readonly input: number | null;
  readonly name: string;
  /** What its length is made of, in the order in which it is laid; whatever is no {@link COLUMNS} of its own is on the way down. */
  readonly parts: readonly { readonly what: string; readonly length: Mm }[];
  /** Length of the run, and how much of it the loom adds. */
  readonly length: Mm;
  readonly extra: Mm;
  /** The stock cables that serve it, one or several joined; empty: none that is left does. */
  readonly stock: readonly Mm[];
  /** What has to be brought for it instead. */
  readonly missing: readonly Mm[];
  readonly notes: readonly string[];
}

/** Parts of a run with a column of their own, by name, before and after the one for the way down. */
const COLUMNS = {
  before: [['loopAtMic', 'Loop at mic']],
  after: [
    ['deck', 'Over the floor'],
    ['edge', 'Over the edge'],
    ['box', 'Up to the box'],
    ['loopAtBox', 'Loop at box'],
    ['dressing', 'Dressing'],
  ],
} as const;
const OWN: ReadonlySet<string> = new Set(
  [...COLUMNS.before, ...COLUMNS.after].map(([what]) => what),
);

/** The cable schedule as a table, the multicore last; joined cables stand as a sum: `5 + 10`. */
export function cableTable(rows: readonly CableRow[], tail: Mm, unit: LengthUnit): Table {
  const long = longUnit(unit);
  const titled = (columns: readonly (readonly [string, string])[]): string[] =>
    columns.map(([, title]) => `${title} (${long})`);
  const header = [
    'Channel',
    'Box input',
    'Input colours',
    'Name',
    ...titled(COLUMNS.before),
    `Down (${long})`,
    ...titled(COLUMNS.after),
    `Run (${long})`,
    `By the loom (${long})`,
    `Stock cable (${long})`,
    `To bring (${long})`,
    'Notes',
  ];
  const multicore = header.map((title) => {
    if (title === 'Name') return 'Multicore to the stage box';
    return title === `Run (${long})` ? longNumber(tail, unit) : '';
  });
  return {
    header,
    rows: [...rows.map((row) => rowOf(row, unit)), ...(tail > 0 ? [multicore] : [])],
  };
}

function rowOf(row: CableRow, unit: LengthUnit): Table['rows'][number] {
  const { channel, input, name, parts, length, extra, stock, missing, notes } = row;
  const part = (isIt: (what: string) => boolean): number | string => {
    const sum = parts.reduce((all, each) => all + (isIt(each.what) ? each.length : 0), 0);
    return sum > 0 ? longNumber(sum, unit) : '';
  };
  const own = ([name]: readonly [string, string]): number | string => part((what) => what === name);
  return [
    channel,
    input,
    colourWords(input),
    name,
    ...COLUMNS.before.map(own),
    part((what) => !OWN.has(what)),
    ...COLUMNS.after.map(own),
    longNumber(length, unit),
    longNumber(extra, unit),
    sumCell(stock, unit),
    sumCell(missing, unit),
    [...(stock.length > 1 ? ['joined'] : []), ...notes].join(', '),
  ];
}

function sumCell(lengths: readonly Mm[], unit: LengthUnit): number | string {
  const numbers = lengths.map((length) => longNumber(length, unit));
  return numbers.length === 1 ? (numbers[0] ?? '') : numbers.join(' + ');
}
