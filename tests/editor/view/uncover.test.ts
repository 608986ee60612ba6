import fc from 'fast-check';
import { expect, test } from 'vitest';
import { footZone } from '../../../src/editor/labels/reserved.ts';
import { covering } from '../../../src/editor/view/uncover.ts';
import { panned, toScreen } from '../../../src/editor/view/view.ts';
import { kit, viewOf } from '../support.ts';

const { view } = viewOf(kit('five-piece-two-racks'));
const { height } = view.size;
const coordinate = fc.integer({ min: -3000, max: 3000 });
const spots = fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength: 1, maxLength: 3 });
const foot = fc.integer({ min: 1, max: 140 });
const lowest = (on: typeof view, of: readonly { x: number; y: number }[]): number =>
  Math.max(...of.map((spot) => toScreen(on, spot).y));

test('moved up by what covers them, spots on the screen stand over the cards, and then nothing covers them', () => {
  fc.assert(
    fc.property(spots, foot, (these, high) => {
      const seen = these.filter((spot) => toScreen(view, spot).y <= height);
      fc.pre(seen.length > 0);
      const by = covering(view, these, high);
      const after = panned(view, { x: 0, y: -by });
      expect(lowest(after, seen)).toBeLessThan(height - footZone(high));
      expect(covering(after, seen, high)).toBeCloseTo(0, 6);
    }),
  );
});

test('nothing moves where no spot is covered, nor for what is off the screen below', () => {
  fc.assert(
    fc.property(spots, foot, (these, high) => {
      const free = these.filter((spot) => {
        const { y } = toScreen(view, spot);
        return y > height || y < height - footZone(high) - 30;
      });
      expect(covering(view, free, high)).toBe(0);
    }),
  );
});
