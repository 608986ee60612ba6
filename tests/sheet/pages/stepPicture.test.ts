import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { focusOf } from '../../../src/report/placement/focus.ts';
import { setUpSteps } from '../../../src/report/placement/steps.ts';
import type { CircleMark, TextMark } from '../../../src/sheet/mark.ts';
import { stepPicture } from '../../../src/sheet/pages/stepPicture.ts';
import { overlaps } from '../../../src/sheet/paper/placeLabels.ts';
import { roomOf } from '../../../src/sheet/paper/text.ts';
import { sheetWords } from '../../../src/views/words/sheetWords.ts';
import { startingKit } from '../samples.ts';

const layout = startingKit('large-kit');
const report = createAnalyst()(layout);
const words = sheetWords(layout, report, 'A4');

describe.each(['house', 'player'] as const)(
  'the picture of a step, seen from the %s',
  (seenFrom) => {
    const pictures = setUpSteps(layout, report.runs).map((step) => {
      const focus = focusOf(step, layout, report);
      return { step, focus, page: stepPicture({ layout, report, words, seenFrom }, focus) };
    });

    test('has the measures of every spot, none over another and none cut off', () => {
      for (const { focus, page } of pictures) {
        const texts = page.marks.filter((mark): mark is TextMark => mark.kind === 'text');
        const written = texts.map(({ text }) => text);
        for (const { measures } of focus.spots) {
          expect(written).toContain(String(Math.round(measures.fromLeft)));
          expect(written).toContain(String(Math.round(measures.fromBack)));
        }
        const rooms = texts.map(roomOf);
        rooms.forEach((room, i) => {
          expect(room.x >= 0 && room.x + room.width <= page.width).toBe(true);
          expect(room.y >= 0 && room.y + room.height <= page.height).toBe(true);
          expect(rooms.slice(i + 1).some((other) => overlaps(room, other))).toBe(false);
        });
      }
    });

    test('rings what is placed, clipped or plugged', () => {
      for (const { step, page } of pictures) {
        const rings = page.marks.filter(
          (mark): mark is CircleMark => mark.kind === 'circle' && mark.layer === 'DIMENSIONS',
        );
        const isAll = step.subject.kind === 'deck' || step.subject.kind === 'check';
        expect(rings.length > 0).toBe(!isAll);
      }
    });
  },
);
