import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Bounds, boundsMeet } from '../../../src/geometry/bounds.ts';
import { rememberedPairs } from '../../../src/rig/standing/pairs.ts';
import type { Standing } from '../../../src/rig/standing/standing.ts';

interface Box {
  readonly name: string;
  readonly bounds: Bounds;
}

/** Boxes 3 mm wide on whole numbers of one line: neighbours up to 3 mm apart meet. */
const boxes: readonly Box[] = Array.from({ length: 12 }, (_, x) => ({
  name: `${x}`,
  bounds: { low: { x, y: 0, z: 0 }, high: { x: x + 3, y: 1, z: 1 } },
}));
const place = { x: 0, y: 0, z: 0 };
const meeting = (p: Box, q: Box): readonly Standing[] => [
  { code: 'mic-against-mic', about: [p.name, q.name], place, overlap: 1 },
];
const told = (found: readonly (readonly Standing[])[]) =>
  found.map((row) => row.map(({ about }) => about.join('-')));

/** What has to come out: every pair in order, by the boxes alone. */
const expected = (firsts: readonly Box[], seconds: readonly Box[], after: boolean) =>
  firsts.map((p, i) =>
    seconds.flatMap((q, j) =>
      (after && j <= i) || !boundsMeet(p.bounds, q.bounds) ? [] : [`${p.name}-${q.name}`],
    ),
  );
const list = fc.subarray([...boxes]).chain((some) => fc.shuffledSubarray(some));
const steps = fc.array(fc.tuple(list, list), { minLength: 1, maxLength: 6 });

describe('rememberedPairs', () => {
  it('always gives what measuring every pair gives, whatever was asked before', () => {
    fc.assert(
      fc.property(steps, (given) => {
        const two = rememberedPairs(meeting, { after: false });
        const own = rememberedPairs(meeting, { after: true });
        for (const [firsts, seconds] of given) {
          expect(told(two(firsts, seconds))).toEqual(expected(firsts, seconds, false));
          expect(told(own(firsts, firsts))).toEqual(expected(firsts, firsts, true));
        }
      }),
    );
  });

  it('measures only what comes near, and again only what is another object than the last time', () => {
    const measured: string[] = [];
    const pairs = rememberedPairs(
      (p: Box, q: Box) => {
        measured.push(`${p.name}-${q.name}`);
        return meeting(p, q);
      },
      { after: true },
    );
    const four = boxes.slice(0, 5);
    const before = pairs(four, four);
    expect(measured).toHaveLength(9);
    measured.length = 0;
    expect(pairs([...four], [...four])).toEqual(before);
    expect(measured).toEqual([]);
    const moved = four.map((box, i) => (i === 1 ? { ...box } : box));
    expect(pairs(moved, moved)).toEqual(before);
    expect(measured).toEqual(['0-1', '1-2', '1-3', '1-4']);
  });
});
