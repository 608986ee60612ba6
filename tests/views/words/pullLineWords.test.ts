import { expect, test } from 'vitest';
import type { PullLine } from '../../../src/patch/pull/pullList.ts';
import { pullLineWords } from '../../../src/views/words/pullLineWords.ts';
import { sample } from './sampleLayout.ts';

const carrying = (count: number) => ({
  ...sample,
  cabling: { ...sample.cabling, stock: [{ length: 5000, count }] },
});
const cable = (needed: number, spare: number, which = '5000'): PullLine => ({
  kind: 'cable',
  which,
  needed,
  spare,
  total: needed + spare,
});

test('a line says what its total is made of where spares are in it', () => {
  const clips: PullLine = { kind: 'rimClip', which: 'steel', needed: 5, spare: 1, total: 6 };
  expect(pullLineWords(clips, sample)).toBe('5 needed, 1 spare');
  expect(pullLineWords({ ...clips, spare: 0, total: 5 }, sample)).toBe('');
});

test('of cables of which fewer are carried it says how many are to be brought, and what for', () => {
  expect(pullLineWords(cable(10, 1), carrying(10))).toBe(
    '10 needed, 1 spare. You carry 10: bring 1 more as the spare',
  );
  expect(pullLineWords(cable(10, 2), carrying(10))).toBe(
    '10 needed, 2 spare. You carry 10: bring 2 more as spares',
  );
  expect(pullLineWords(cable(10, 1), carrying(8))).toBe(
    '10 needed, 1 spare. You carry 8: bring 3 more',
  );
  expect(pullLineWords(cable(10, 0), carrying(9))).toBe('You carry 9: bring 1 more');
  expect(pullLineWords(cable(10, 1), carrying(11))).toBe('10 needed, 1 spare');
});

test('nothing is called short where no stock is listed, nor of cables whose length is told by eye', () => {
  const none = { ...sample, cabling: { ...sample.cabling, stock: [] } };
  expect(pullLineWords(cable(10, 1), none)).toBe('10 needed, 1 spare');
  expect(pullLineWords(cable(2, 0, 'splitLeg'), carrying(1))).toBe('');
});
