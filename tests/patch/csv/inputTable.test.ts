import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_PATCH } from '../../../src/layout/patch.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import { checkTable, inputTable } from '../../../src/patch/csv/inputTable.ts';
import { toCsv } from '../../../src/patch/csv/toCsv.ts';
import { lineCheck, recordCheck } from '../../../src/patch/lineCheck/lineCheck.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { randomKit } from '../../support/randomKit.ts';
import { demoWithMore, patchWith, rowOf, rowsOf } from '../scenes.ts';
import { readCsv } from './readCsv.ts';

const patch = patchWith({
  splits: [usualSplit('split', 'mic-kick-in', 'Seat shaker')],
  channels: [{ ...plainChannel('mic-snare', 'mic-snare'), notes: '=HYPERLINK("x")', highPass: 0 }],
});
const rows = rowsOf(demoWithMore, patch);
const read = readCsv(toCsv(inputTable(rows, demoWithMore.pieces, patch.splits)));
const column = (title: string): readonly string[] => {
  const at = read[0]?.indexOf(title) ?? -1;
  return read.slice(1).map((record) => record[at] ?? `no column ${title}`);
};

describe('the input list as CSV', () => {
  it('has a row for each channel, with its digits beside their colours', () => {
    expect(column('Channel')).toEqual(rows.map(({ channel }) => String(channel)));
    expect(column('Box input')).toEqual(['1', '2', '3', '', '4', '5', '6', '7', '', '8', '9']);
    expect(column('Input colours').slice(0, 5)).toEqual(['brown', 'red', 'orange', '', 'yellow']);
  });

  it('names sources, mounts, stands and splits', () => {
    expect(column('Source').slice(0, 5)).toEqual([
      'Kick, inside',
      'Kick, inside',
      'Snare, top',
      'Snare, bottom',
      'Hi-hat',
    ]);
    expect(column('Source').at(-1)).toBe('Overhead: Crash 2, Ride, Snare');
    expect(column('Mount')[5]).toBe('Rim clip, rubber');
    expect(column('Stand')[0]).toBe('Low tripod boom');
    expect(column('Split')[0]).toBe('Splitter: direct to channel, isolated to Seat shaker');
    expect(column('Split')[1]).toBe('');
  });

  it('shows what is set, and defuses notes', () => {
    expect(column('Polarity')[3]).toBe('reversed');
    expect(column('48 V').slice(0, 5)).toEqual(['off', 'on', 'off', 'off', 'on']);
    expect(column('High-pass (Hz)')[2]).toBe('off');
    expect(column('Notes')[2]).toBe('\'=HYPERLINK("x")');
  });

  it('is whole for any kit and any names', () => {
    fc.assert(
      fc.property(randomKit, fc.string({ minLength: 1 }), (layout, name) => {
        const named = { ...layout, mics: layout.mics.map((mic) => ({ ...mic, name })) };
        const list = rowsOf(named);
        const records = readCsv(toCsv(inputTable(list, named.pieces, [])));
        expect(records).toHaveLength(list.length + 1);
        expect(new Set(records.map(({ length }) => length)).size).toBe(1);
      }),
      { numRuns: 40 },
    );
  });
});

it('the line check as CSV', () => {
  const list = rowsOf(demoWithMore);
  const checked = recordCheck(DEFAULT_PATCH, rowOf(list, 'mic-kick-plate'), 'fail', 'hum, "loud"');
  const records = readCsv(toCsv(checkTable(lineCheck(list, checked.lineCheck))));
  expect(records).toHaveLength(list.length + 1);
  expect(records[1]).toEqual(['1', '1', 'brown', 'Kick in', 'off', 'open', '']);
  expect(records[2]).toEqual(['2', '2', 'red', 'Kick plate', 'on', 'fail', 'hum, "loud"']);
});
