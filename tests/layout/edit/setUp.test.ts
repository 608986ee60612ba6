import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demo } from '../../../src/layout/catalogue/kits/demo.ts';
import { clearSetUp, tickStep } from '../../../src/layout/edit/setUp.ts';

const start = demo('sample');
const key = fc.constantFrom('deck', 'piece:snare', 'mic:a', 'box');
const ticks = fc.array(fc.tuple(key, fc.boolean()));

test('a step is done as it was said last, and twice says no more than once', () => {
  fc.assert(
    fc.property(ticks, (said) => {
      const layout = said.reduce((l, [step, isDone]) => tickStep(l, step, isDone), start);
      const last = new Map(said);
      expect(new Set(layout.setUp.done)).toEqual(
        new Set([...last].filter(([, isDone]) => isDone).map(([step]) => step)),
      );
      for (const [step, isDone] of last) expect(tickStep(layout, step, isDone)).toBe(layout);
    }),
  );
});

test('all ticks come off together', () => {
  expect(clearSetUp(tickStep(start, 'deck', true)).setUp.done).toEqual([]);
  expect(clearSetUp(start)).toBe(start);
});
