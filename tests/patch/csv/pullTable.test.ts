import { describe, expect, it } from 'vitest';
import { pullTable, pullWords } from '../../../src/patch/csv/pullTable.ts';
import { toCsv } from '../../../src/patch/csv/toCsv.ts';
import { pullList } from '../../../src/patch/pull/pullList.ts';
import { setTick, strikeList, tickAllOut } from '../../../src/patch/pull/ticks.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { kit } from '../../rig/kits.ts';
import { patchWith } from '../scenes.ts';
import { readCsv } from './readCsv.ts';

const layout = kit('four-piece-jazz');
const patch = patchWith({ splits: [usualSplit('split', 'mic-kick-out', 'Seat shaker')] });
const list = pullList(layout, patch, { cables: [{ length: 7500, count: 6 }], sandbags: 1 });

describe('the pull list as CSV', () => {
  it('names everything, with counts and ticks', () => {
    const pencil = { kind: 'mic', which: 'gone-class' } as const;
    const ticked = setTick(setTick(tickAllOut(patch, list), pencil, { out: 2 }), pencil, {
      back: 1,
    });
    const records = readCsv(toCsv(pullTable(list, strikeList(list, ticked.ticks), layout)));
    expect(records).toHaveLength(list.length + 2);
    expect(records[0]).toEqual([
      'What',
      'Which',
      'Needed',
      'Spare',
      'Total',
      'Out',
      'Back',
      'Not back',
    ]);
    expect(records).toContainEqual(['Mic', 'Side-address condenser', '2', '1', '3', '3', '0', '3']);
    expect(records).toContainEqual(['Stand', 'Tall tripod boom', '2', '1', '3', '3', '0', '3']);
    expect(records).toContainEqual(['Mic cable', '7.5 m', '6', '1', '7', '7', '0', '7']);
    expect(records).toContainEqual([
      'Mic cable',
      'for legs of splits, length by eye',
      '2',
      '1',
      '3',
      '3',
      '0',
      '3',
    ]);
    expect(records).toContainEqual(['Drum sub-box', '8 inputs', '1', '0', '1', '1', '0', '1']);
    expect(records).toContainEqual(['Multicore tail', '15 m', '1', '0', '1', '1', '0', '1']);
    expect(records).toContainEqual(['Splitter', '1 to 2', '1', '1', '2', '2', '0', '2']);
    expect(records.at(-1)).toEqual(['Mic', 'gone-class', '0', '0', '0', '2', '1', '1']);
  });

  it('one sort in words has its kind, and which where there are several', () => {
    expect(pullWords({ kind: 'cable', which: '7500' }, layout)).toBe('Mic cable: 7.5 m');
    expect(pullWords({ kind: 'micHolder', which: '' }, layout)).toBe('Mic holder');
  });

  it('in feet where the layout shows inches', () => {
    const inches = { ...layout, units: 'in' as const };
    const records = readCsv(toCsv(pullTable(list, strikeList(list, []), inches)));
    expect(records.map((record) => record[1])).toContain('24.61 ft');
  });
});
