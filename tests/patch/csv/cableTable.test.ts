import { describe, expect, it } from 'vitest';
import { type CableRow, cableTable } from '../../../src/patch/csv/cableTable.ts';
import { toCsv } from '../../../src/patch/csv/toCsv.ts';
import { readCsv } from './readCsv.ts';

const row: CableRow = {
  channel: 3,
  input: 12,
  name: 'Snare',
  parts: [
    { what: 'loopAtMic', length: 500 },
    { what: 'boom', length: 700 },
    { what: 'mast', length: 900 },
    { what: 'deck', length: 1521 },
    { what: 'box', length: 60 },
    { what: 'loopAtBox', length: 400 },
    { what: 'dressing', length: 240 },
  ],
  length: 4321,
  extra: 210,
  stock: [5000],
  missing: [],
  notes: [],
};
const read = (rows: readonly CableRow[], unit: 'mm' | 'in', tail = 0) =>
  readCsv(toCsv(cableTable(rows, tail, unit)));

describe('the cable schedule as CSV', () => {
  it('in metres, every part of the length in a column of its own', () => {
    const [header, cells] = read([row], 'mm');
    expect(Object.fromEntries((header ?? []).map((title, i) => [title, cells?.[i]]))).toEqual({
      Channel: '3',
      'Box input': '12',
      'Input colours': 'brown red',
      Name: 'Snare',
      'Loop at mic (m)': '0.5',
      'Down (m)': '1.6',
      'Over the floor (m)': '1.52',
      'Over the edge (m)': '',
      'Up to the box (m)': '0.06',
      'Loop at box (m)': '0.4',
      'Dressing (m)': '0.24',
      'Run (m)': '4.32',
      'By the loom (m)': '0.21',
      'Stock cable (m)': '5',
      'To bring (m)': '',
      Notes: '',
    });
  });

  it('in feet: 7620 mm are 25 ft', () => {
    const [header, cells] = read([{ ...row, length: 3048, stock: [7620] }], 'in');
    expect(header?.slice(11, 14)).toEqual(['Run (ft)', 'By the loom (ft)', 'Stock cable (ft)']);
    expect(cells?.slice(11, 14)).toEqual(['10', '0.69', '25']);
  });

  it('joined cables as a sum, what has to be brought beside, an unplugged one without colours', () => {
    const [, joined, missing] = read(
      [
        { ...row, stock: [10_000, 5000], notes: ['cover it'] },
        { ...row, channel: null, input: null, stock: [], missing: [10_000] },
      ],
      'mm',
    );
    expect(joined?.slice(13)).toEqual(['10 + 5', '', 'joined, cover it']);
    expect(missing?.slice(0, 4)).toEqual(['', '', '', 'Snare']);
    expect(missing?.slice(13)).toEqual(['', '10', '']);
  });

  it('ends with the multicore, when there is one', () => {
    const [, , multicore, ...none] = read([row], 'mm', 15_000);
    expect(none).toEqual([]);
    expect(multicore?.slice(3, 4)).toEqual(['Multicore to the stage box']);
    expect(multicore?.slice(11, 12)).toEqual(['15']);
    expect(read([row], 'mm')).toHaveLength(2);
  });
});
