import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LineMark, TextMark } from '../../../src/sheet/mark.ts';
import type { Room } from '../../../src/sheet/paper/layOut.ts';
import {
  overlaps,
  placeLargeLabels,
  placePaperLabels,
} from '../../../src/sheet/paper/placeLabels.ts';
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

  const at = { x: 80, y: 80 };
  const namesIn = (marks: ReturnType<typeof placePaperLabels>) =>
    marks.filter((mark): mark is TextMark => mark.kind === 'text');
  const isIn = (box: Room, { x, y }: { readonly x: number; readonly y: number }): boolean =>
    x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;

  test('where it would hide the drawing, a label goes where it hides less of it (N2)', () => {
    const one = [{ at, forms: ['Floor tom 640'] }];
    const [usual] = namesIn(placePaperLabels(one, room)).map(roomOf);
    if (!usual) throw new Error('expected a label');
    // What is drawn lies just where the label would stand.
    const drawn = Array.from({ length: 400 }, (_, i) => ({
      x: usual.x + ((i % 20) / 19) * usual.width,
      y: usual.y + (Math.floor(i / 20) / 19) * usual.height,
    }));
    const [moved] = namesIn(placePaperLabels(one, room, { drawn })).map(roomOf);
    if (!moved) throw new Error('expected a label');
    expect(drawn.filter((spot) => isIn(usual, spot)).length).toBeGreaterThan(300);
    expect(drawn.filter((spot) => isIn(moved, spot)).length).toBeLessThan(100);
  });

  test('in full where there is room for it, else in the longest form that fits (N2)', () => {
    const forms = ['P10 Some long name 1230', 'P10 1230', 'P10'];
    const inRoom = (width: number) =>
      namesIn(
        placePaperLabels([{ at: { x: width / 2, y: 5 }, forms }], {
          x: 0,
          y: 0,
          width,
          height: 10,
        }),
      ).map(({ text }) => text);
    const widths = forms.map((text) => {
      const [mark] = namesIn(placePaperLabels([{ at, forms: [text] }], room));
      return mark ? roomOf(mark).width : 0;
    });
    const [full = 0, middle = 0, short = 0] = widths;
    expect(full > middle && middle > short && short > 0).toBe(true);
    expect(inRoom(3 * full)).toEqual([forms[0]]);
    expect(inRoom(full - 0.5)).toEqual([forms[1]]);
    expect(inRoom(middle - 0.5)).toEqual([forms[2]]);
  });

  test('letters are large where none is left out by that, and no smaller than need be (N4)', () => {
    const one = placeLargeLabels([{ at, forms: ['Snare 640'] }], room, {});
    expect(namesIn(one).map(({ size }) => size)).toEqual([3]);
    const crowd = Array.from({ length: 60 }, (_, i) => ({ at, forms: [`Name ${i}`] }));
    const counts = new Set<number>();
    for (let side = 20; side <= 90; side += 10) {
      const small = { x: 80 - side / 2, y: 80 - side / 2, width: side, height: side };
      const placed = namesIn(placeLargeLabels(crowd, small, {}));
      const least = namesIn(placePaperLabels(crowd, small));
      expect(placed.length).toBeGreaterThanOrEqual(least.length);
      for (const { size } of placed) counts.add(size);
    }
    expect(Math.min(...counts)).toBe(2.4);
    expect(Math.max(...counts)).toBe(3);
  });

  test('one that finds no place even in its shortest form is left out, the others are not (N3)', () => {
    const crowd = Array.from({ length: 60 }, (_, i) => ({ at, forms: [`Name ${i}`] }));
    const small = { x: 60, y: 60, width: 40, height: 40 };
    const placed = namesIn(placePaperLabels(crowd, small));
    expect(placed.length).toBeGreaterThan(5);
    expect(placed.length).toBeLessThan(60);
    expect(placePaperLabels(crowd, room, { taken: [room] })).toEqual([]);
  });
});
