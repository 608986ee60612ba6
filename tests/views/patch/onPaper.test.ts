import { expect, test } from 'vitest';
import { onPaper } from '../../../src/views/patch/onPaper.ts';

test('what has not gone out or come back is a box to tick; what has keeps its count', () => {
  const header = ['What', 'Total', 'Out', 'Back', 'Not back'];
  const { rows } = onPaper('pull', {
    header,
    rows: [
      ['Mic', 3, 0, 0, 0],
      ['Stand', 2, 2, 1, 0],
    ],
  });
  expect(rows).toEqual([
    ['Mic', '3', '[ ]', '[ ]', '0'],
    ['Stand', '2', '2', '1', '0'],
  ]);
});

test('a line that is not checked, or was changed since, is a box to tick', () => {
  const { rows } = onPaper('check', {
    header: ['Channel', 'Result'],
    rows: [
      [1, 'open'],
      [2, 'stale'],
      [3, 'fail'],
    ],
  });
  expect(rows.map(([, result]) => result)).toEqual(['[ ]', '[ ]', 'fail']);
});

test('numbers of a column have the same decimals, and nothing stays nothing', () => {
  const { rows } = onPaper('cables', {
    header: ['Name', 'Run (m)', 'Stock cable (m)'],
    rows: [
      ['Snare', 3.1, 5],
      ['Hi-hat', 3.29, 7.5],
      ['Multicore', 15, null],
    ],
  });
  expect(rows).toEqual([
    ['Snare', '3.10', '5.0'],
    ['Hi-hat', '3.29', '7.5'],
    ['Multicore', '15.00', ''],
  ]);
});
