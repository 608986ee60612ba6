import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lowestFirst } from '../../src/clearance/lowestFirst.ts';

/** Whole tenths of a mm: what lies nearer together is in order of its place. */
const height = fc.oneof(
  fc.integer({ min: -20_000, max: 20_000 }).map((tenths) => tenths / 10),
  fc.constant(Number.POSITIVE_INFINITY),
);

it('all that has a height, once, the lowest first and at one height as it stands in the list', () => {
  fc.assert(
    fc.property(fc.array(height), (heights) => {
      const wanted = [...heights.keys()]
        .filter((i) => Number.isFinite(heights[i]))
        .sort((i, j) => (heights[i] ?? 0) - (heights[j] ?? 0) || i - j);
      expect([...lowestFirst(Float64Array.from(heights))]).toEqual(wanted);
    }),
  );
});
