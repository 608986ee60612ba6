import { describe, expect, it } from 'vitest';
import { type CableRow, cableTable } from '../../../src/patch/csv/cableTable.ts';
import { toCsv } from '../../../src/patch/csv/toCsv.ts';
import { readCsv } from './readCsv.ts';

const row: CableRow = {
  channel: 3,
  input: 12,
  name: 'Snare',
  length: 4321,
  stock: [5000],
  notes: '',
};
const read = (rows: readonly CableRow[], unit: 'mm' | 'in') =>
  readCsv(toCsv(cableTable(rows, unit)));

describe('the cable schedule as CSV', () => {
  it('in metres', () => {
    expect(read([row], 'mm')).toEqual([
      ['Channel', 'Box input', 'Input colours', 'Name', 'Run (m)', 'Stock cable (m)', 'Notes'],
      ['3', '12', 'brown red', 'Snare', '4.32', '5', ''],
    ]);
  });

  it('in feet: 7620 mm are 25 ft', () => {
    const [header, cells] = read([{ ...row, length: 3048, stock: [7620] }], 'in');
    expect(header?.slice(4, 6)).toEqual(['Run (ft)', 'Stock cable (ft)']);
    expect(cells?.slice(4, 6)).toEqual(['10', '25']);
  });

  it('joined cables as a sum, a missing one by word, an unplugged one without colours', () => {
    const [, joined, missing] = read(
      [
        { ...row, stock: [5000, 10_000] },
        { ...row, channel: null, input: null, stock: [] },
      ],
      'mm',
    );
    expect(joined?.[5]).toBe('5 + 10');
    expect(missing).toEqual(['', '', '', 'Snare', '4.32', 'missing', '']);
  });
});
