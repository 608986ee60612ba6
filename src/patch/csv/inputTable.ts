import type { Layout } from '../../layout/layout.ts';
import type { Split } from '../../layout/patch.ts';
import type { InputRow } from '../inputList.ts';
import type { CheckStep } from '../lineCheck/lineCheck.ts';
import {
  colourWords,
  INSERTS,
  mountWords,
  sourceWords,
  splitWords,
  standWords,
} from './cellWords.ts';
import type { Cell, Table } from './toCsv.ts';

const HEADER = [
  'Channel',
  'Box input',
  'Input colours',
  'Name',
  'Source',
  'Mic class',
  'Mount',
  'Stand',
  '48 V',
  'Polarity',
  'High-pass (Hz)',
  'Pad (dB)',
  'Insert',
  'Split',
  'Notes',
] as const;

/** The input list as a table, in its order. */
export function inputTable(
  rows: readonly InputRow[],
  pieces: Layout['pieces'],
  splits: readonly Split[],
): Table {
  const names = new Map(pieces.map(({ id, name }) => [id, name]));
  return {
    header: HEADER,
    rows: rows.map((row): readonly Cell[] => {
      const split = splits.find(({ id }) => id === row.split);
      return [
        row.channel,
        row.input,
        colourWords(row.input),
        row.name,
        sourceWords(row, names),
        row.micClass.name,
        mountWords(row.mount),
        standWords(row.mount),
        onOff(row.phantom.value),
        row.polarity.value,
        row.highPass.value === 0 ? 'off' : row.highPass.value,
        row.pad.value,
        INSERTS[row.insert.value],
        split ? splitWords(split) : '',
        row.notes,
      ];
    }),
  };
}

/** The line check as a table. */
export const checkTable = (steps: readonly CheckStep[]): Table => ({
  header: ['Channel', 'Box input', 'Input colours', 'Name', '48 V at the mic', 'Result', 'Note'],
  rows: steps.map(({ row, state, note }) => [
    row.channel,
    row.input,
    colourWords(row.input),
    row.name,
    onOff(row.supplies > 0),
    state,
    note,
  ]),
});

const onOff = (on: boolean): string => (on ? 'on' : 'off');
