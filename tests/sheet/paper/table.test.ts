import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TextMark } from '../../../src/sheet/mark.ts';
import { naturalWidth, type SheetTable, setTable } from '../../../src/sheet/paper/table.ts';
import { roomOf } from '../../../src/sheet/paper/text.ts';

const word = fc.constantFrom('snare', 'kick', 'overhead', 'left', 'of', 'boom', 'short');
const words = fc.array(word, { minLength: 1, maxLength: 12 }).map((list) => list.join(' '));
/** Three columns; the second and the third may be broken. */
const tables = fc
  .array(fc.tuple(fc.constantFrom('overhead, floor tom side', 'snare'), words, words), {
    minLength: 1,
    maxLength: 6,
  })
  .map(
    (rows): SheetTable => ({ header: ['Mic', 'How', 'Why'], rows, broken: [1, 2], numbers: [] }),
  );

const textsOf = (table: SheetTable, width: number): readonly TextMark[] =>
  setTable(table, { x: 10, y: 10, width, height: 1000 }).marks.filter(
    (mark): mark is TextMark => mark.kind === 'text',
  );

describe('tables on paper', () => {
  test('W1 with room enough no cell is broken', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const set = textsOf(table, naturalWidth(table) + 0.1).map(({ text }) => text);
        expect(set).toEqual([table.header, ...table.rows].flat());
      }),
      { numRuns: 40 },
    );
  });

  test('a row of one cell is a heading across all columns, and is not left alone where the room ends', () => {
    const table: SheetTable = {
      header: ['', 'Step', 'Left'],
      rows: [
        ['1', 'Throne', '9'],
        ['Drums, all of them, and what hangs over'],
        ['2', 'Snare', '8'],
      ],
      broken: [1],
      numbers: [2],
    };
    const room = { x: 10, y: 10, width: naturalWidth(table) + 0.1, height: 1000 };
    const whole = setTable(table, room, 3.2);
    expect(whole.rows).toBe(3);
    const heading = whole.marks.filter(
      (mark) => mark.kind === 'text' && mark.text.includes('Drums'),
    );
    expect(heading).toMatchObject([{ bold: true, at: { x: 10 } }]);
    // The heading does not make its column wide.
    expect(room.width).toBeLessThan(40);
    for (let height = 1; height < whole.height; height += 0.5) {
      expect(setTable(table, { ...room, height }, 3.2).rows).not.toBe(2);
    }
  });

  test('a cell that may spread begins where the empty ones before it do, and only where all of them are', () => {
    const set = textsOf(
      {
        header: ['Step', 'Point', 'Left', 'Set'],
        rows: [
          ['Snare', 'Stand', '', 'Head 660 mm high'],
          ['Clip', '', '', 'On the snare'],
        ],
        broken: [3],
        numbers: [2],
        spread: { from: 1, to: 3 },
      },
      200,
    );
    const left = (text: string) => set.find((mark) => mark.text === text)?.at.x ?? Number.NaN;
    expect(left('On the snare')).toBe(left('Point'));
    expect(left('Head 660 mm high')).toBe(left('Set'));
  });

  test('a line break in a cell begins a line, level with those of the cells beside it', () => {
    const set = textsOf(
      {
        header: ['Point', 'Left'],
        rows: [['Stand\nFront of the mic', '1790\n1780']],
        broken: [],
        numbers: [1],
      },
      100,
    );
    const level = (text: string) => set.find((mark) => mark.text === text)?.at.y ?? Number.NaN;
    expect(level('Stand')).toBe(level('1790'));
    expect(level('Front of the mic')).toBe(level('1780'));
    expect(level('1780')).toBeGreaterThan(level('1790'));
  });

  test('W1 with less room only the columns that may be are broken, no word is lost and nothing leaves the room', () => {
    fc.assert(
      fc.property(tables, fc.double({ min: 0.5, max: 1, noNaN: true }), (table, share) => {
        const fixed = naturalWidth({
          ...table,
          header: ['Mic'],
          rows: table.rows.map(([mic = '']) => [mic]),
          broken: [],
        });
        const width = Math.max(share * naturalWidth(table), fixed + 2 * 14 + 3 * 2.2);
        const set = textsOf(table, width);
        const sorted = (texts: readonly string[]) => texts.join(' ').split(' ').toSorted();
        expect(sorted(set.map(({ text }) => text))).toEqual(
          sorted([table.header, ...table.rows].flat()),
        );
        const first = table.rows.map(([mic]) => mic);
        const inFirst = set.filter(({ at, bold }) => at.x === 10 && !bold).map(({ text }) => text);
        expect(inFirst).toEqual(first);
        for (const one of set.map(roomOf)) {
          expect(one.x + one.width).toBeLessThanOrEqual(10 + width + 0.5);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('W1 the widest column gives way first', () => {
    const table: SheetTable = {
      header: ['Mic', 'How', 'Why'],
      rows: [
        ['snare', 'clip on the rim', 'because it stands clear of every stroke that is played here'],
      ],
      broken: [1, 2],
      numbers: [],
    };
    const set = textsOf(table, naturalWidth(table) - 20).map(({ text }) => text);
    expect(set).toContain('clip on the rim');
    expect(set).not.toContain(table.rows[0]?.[2]);
  });
});
