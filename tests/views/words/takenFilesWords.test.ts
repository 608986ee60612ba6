import { expect, test } from 'vitest';
import {
  notImportedWords,
  notOpenedWords,
  openedWords,
  quotedNames,
  takenWords,
} from '../../../src/views/words/takenFilesWords.ts';

const refused = (file: string, ...paths: readonly string[]) => ({
  ok: false as const,
  file,
  problems: paths.map((path) => ({ path, message: 'expected a number' })),
});

test('layouts that came in are named, many of them counted', () => {
  expect(takenWords(['Club'])[0]).toBe('Imported “Club”');
  expect(takenWords(['Club', 'Hall'])).toEqual([
    'Imported 2 layouts',
    '“Club” and “Hall” are in the list, each as a layout of its own.',
  ]);
  const many = Array.from({ length: 9 }, (_, k) => `L${k}`);
  expect(quotedNames(many)).toBe('“L0”, “L1”, “L2”, “L3”, “L4” and 4 more');
  expect(openedWords(['Club', 'Hall'])).toBe(
    'Taken in: “Club”, open now, and in the list of layouts “Hall”',
  );
});

test('files that did not come in are named, with why, and what came along with them is said', () => {
  expect(notImportedWords(1, 0)).toEqual(['This file was not imported', '']);
  expect(notImportedWords(2, 1)).toEqual([
    '2 files were not imported',
    '1 layout that came along was imported.',
  ]);
  expect(notOpenedWords([refused('a.json', 'margin', 'deck')])).toEqual([
    '“a.json” was not opened',
    'margin: expected a number deck: expected a number',
  ]);
  expect(notOpenedWords([refused('a.json', 'margin', 'deck'), refused('b.json', '')])).toEqual([
    '2 files were not opened',
    '“a.json”: margin: expected a number and 1 more. “b.json”: expected a number.',
  ]);
});
