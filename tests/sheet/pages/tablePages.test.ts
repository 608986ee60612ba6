import { expect, test } from 'vitest';
import type { TextMark } from '../../../src/sheet/mark.ts';
import { flowedBodies } from '../../../src/sheet/pages/tablePages.ts';
import type { SheetTable } from '../../../src/sheet/paper/table.ts';
import { roomOf } from '../../../src/sheet/paper/text.ts';

const body = { x: 12, y: 30, width: 186, height: 240 };
/** As many lines as a page has not: each is told apart. */
const many = (name: string, lines: number): string =>
  Array.from({ length: lines }, (_, k) => `${name}${k}`).join('\n');

const table = (rows: SheetTable['rows']): SheetTable => ({
  header: ['Mic', 'Notes', 'No.'],
  rows,
  broken: [1],
  numbers: [2],
});

test.each([
  ['alone', [['Snare', many('a', 200), '1']]],
  ['as tall as a page but for a line', [['Snare', many('a', 66), '1']]],
  [
    'among others, under a heading that is as tall',
    [
      ['Kick', 'short', '1'],
      [many('Heading', 90)],
      ['Snare', many('a', 200), '2'],
      ['Rack', many('b', 70), '3'],
      ['Floor', 'short too', '4'],
    ],
  ],
])(
  'W2: a row taller than a page goes on over the next ones, and no line of it is lost: %s',
  (_, rows) => {
    const pages = flowedBodies([{ kind: 'table', table: table(rows) }], body);
    const texts = pages.map((marks) =>
      marks.filter((mark): mark is TextMark => mark.kind === 'text'),
    );
    const written = texts.flat().map(({ text }) => text);
    for (const line of rows.flat().flatMap((cell) => cell.split('\n'))) {
      expect(written, line).toContain(line);
    }
    for (const mark of texts.flat()) {
      const { y, height } = roomOf(mark);
      expect(y + height, mark.text).toBeLessThanOrEqual(body.y + body.height + 0.01);
    }
  },
);

test('rows that fit are set as they are', () => {
  const rows = [['Snare', many('a', 20), '1']];
  const [page, ...more] = flowedBodies([{ kind: 'table', table: table(rows) }], body);
  expect(more).toEqual([]);
  // A rule under the header and one under the row.
  expect(page?.filter(({ kind }) => kind === 'line')).toHaveLength(2);
});
