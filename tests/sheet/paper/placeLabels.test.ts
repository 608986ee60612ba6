import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LineMark, TextMark } from '../../../src/sheet/mark.ts';
import { overlaps, placePaperLabels } from '../../../src/sheet/paper/placeLabels.ts';
import { roomOf } from '../../../src/sheet/paper/text.ts';

const room = { x: 10, y: 20, width: 150, height: 120 };
const label = fc.record({
  at: fc.record({
    x: fc.double({ min: 10, max: 160, noNaN: true }),
    y: fc.double({ min: 20, max: 140, noNaN: true }),
  }),
  forms: fc.constant(['P10 Some name 1230', 'P10 1230', 'P10']),
});
const labels = fc.array(label, { maxLength: 40 });

describe('labels on paper', () => {
  test('lie in the room and not over each other (N1)', () => {
    fc.assert(
      fc.property(labels, (wishes) => {
        const rooms = placePaperLabels(wishes, room)
          .filter((mark): mark is TextMark => mark.kind === 'text')
          .map(roomOf);
        rooms.forEach((one, i) => {
          expect(one.x >= room.x && one.x + one.width <= room.x + room.width + 1e-9).toBe(true);
          expect(one.y >= room.y - 1e-9 && one.y + one.height <= room.y + room.height + 1e-9).toBe(
            true,
          );
          expect(rooms.slice(i + 1).some((other) => overlaps(one, other))).toBe(false);
        });
      }),
      { numRuns: 30 },
    );
  });

  test('keep off what is taken', () => {
    fc.assert(
      fc.property(labels, (wishes) => {
        const taken = [{ x: 40, y: 40, width: 60, height: 50 }];
        const rooms = placePaperLabels(wishes, room, { taken })
          .filter((mark): mark is TextMark => mark.kind === 'text')
          .map(roomOf);
        expect(rooms.some((one) => taken.some((each) => overlaps(one, each)))).toBe(false);
      }),
      { numRuns: 30 },
    );
  });

  test('one alone stands beside what it names, in full, without a line', () => {
    const marks = placePaperLabels([{ at: { x: 80, y: 80 }, forms: ['Snare 640', 'P1'] }], room);
    const lines = marks.filter((mark): mark is LineMark => mark.kind === 'line');
    expect(marks.map((mark) => (mark.kind === 'text' ? mark.text : ''))).toContain('Snare 640');
    expect(lines.filter(({ look }) => look.ink !== null)).toEqual([]);
  });
});
