import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_PATCH } from '../../../src/layout/patch.ts';
import { setSpares, sparesFor } from '../../../src/patch/pull/spares.ts';

const rule = (percent: number, least: number) => ({ usual: { percent, least }, byKind: {} });

describe('P4 spares', () => {
  it('by default: a tenth, at least one of each; none of box, tail and sandbags', () => {
    const of = (needed: number) => sparesFor(needed, 'mic', DEFAULT_PATCH.spares);
    expect([0, 1, 9, 10, 11, 20, 21].map(of)).toEqual([0, 1, 1, 1, 2, 2, 3]);
    for (const kind of ['box', 'tail', 'sandbag'] as const) {
      expect(sparesFor(3, kind, DEFAULT_PATCH.spares)).toBe(0);
    }
  });

  it('are the fewest whole things that make up the percentage, counted in whole numbers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 200 }),
        (needed, percent) => {
          const spare = sparesFor(needed, 'cable', rule(percent, 0));
          expect(100 * spare).toBeGreaterThanOrEqual(percent * needed);
          expect(100 * (spare - 1)).toBeLessThan(percent * needed);
        },
      ),
    );
  });

  it('a percentage that is no binary number adds no spare: 16.1 % of 1000 is 161', () => {
    expect(sparesFor(1000, 'cable', rule(16.1, 0))).toBe(161);
  });

  it('are never fewer than the least, never fewer for more, and none of nothing', () => {
    const count = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(
        count,
        count,
        fc.nat({ max: 100 }),
        fc.nat({ max: 9 }),
        (a, b, percent, least) => {
          const [few, many] = [Math.min(a, b), Math.max(a, b)].map((needed) =>
            sparesFor(needed, 'mic', rule(percent, least)),
          );
          expect(few).toBeGreaterThanOrEqual(least);
          expect(many).toBeGreaterThanOrEqual(few ?? 0);
          expect(sparesFor(0, 'mic', rule(percent, least))).toBe(0);
        },
      ),
    );
  });
});

describe('setting a rule of spares', () => {
  const own = { percent: 50, least: 2 };

  it('for one kind leaves all others, and null gives it back to the rule of all', () => {
    const set = setSpares(DEFAULT_PATCH, 'cable', own);
    expect(sparesFor(10, 'cable', set.spares)).toBe(5);
    expect(sparesFor(10, 'mic', set.spares)).toBe(1);
    expect(setSpares(set, 'cable', null)).toEqual(DEFAULT_PATCH);
    const all = setSpares(DEFAULT_PATCH, null, own);
    expect(sparesFor(10, 'mic', all.spares)).toBe(5);
    expect(sparesFor(1, 'box', all.spares)).toBe(0);
  });

  it('without effect is the same object', () => {
    expect(setSpares(DEFAULT_PATCH, 'cable', null)).toBe(DEFAULT_PATCH);
    expect(setSpares(DEFAULT_PATCH, null, null)).toBe(DEFAULT_PATCH);
    expect(setSpares(DEFAULT_PATCH, null, DEFAULT_PATCH.spares.usual)).toBe(DEFAULT_PATCH);
    const set = setSpares(DEFAULT_PATCH, 'cable', own);
    expect(setSpares(set, 'cable', { ...own })).toBe(set);
  });
});
