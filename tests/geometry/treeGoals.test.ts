import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull } from '../../src/geometry/convexPolygon.ts';
import { gap } from '../../src/geometry/plan.ts';
import { Tangents } from '../../src/geometry/tangents.ts';
import { TreeGoals } from '../../src/geometry/treeGoals.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { WayTree } from '../../src/geometry/wayTree.ts';
import { planPoint } from './planScenes.ts';

/** A way laid along the x axis, from -10 to 10, and one that comes from elsewhere, on an empty floor. */
function laid(from: Vec2, most: number, each: number) {
  const tangents = new Tangents<'kit'>([], undefined);
  const end = tangents.place({ x: 10, y: 0 });
  const first = { own: [tangents.place({ x: -10, y: 0 }), end], most: 100 };
  const second = { own: [tangents.place(from), end], most };
  const tree = new WayTree(tangents, [first, second], { each, once: 1 - each });
  tree.lay(0, first);
  const head = tree.lay(1, second);
  if (!head) throw new Error('a laid way was expected');
  return { tree, head };
}

describe('where a way joins another', () => {
  const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
  const length = fc.double({ min: 0, max: 60, noNaN: true });

  it('G1, G2: no sampled place of the other way is better, nor is any offered one worse than the limit', () => {
    fc.assert(
      fc.property(planPoint, share, length, (from, each, over) => {
        const most = gap(from, { x: 10, y: 0 }) + over;
        const { tree, head } = laid(from, most, each);
        const chain = tree.chainFrom(head);
        const below = chain.cost / tree.perMm(1);
        const goals = new TreeGoals(tree, chain, below);
        const found = goals.from(from, 0).map(({ point, rest }) => gap(from, point) + rest);
        const best = Math.min(...found, below);
        for (let x = -10; x <= 10; x += 0.125) {
          const direct = gap(from, { x, y: 0 });
          if (direct + (10 - x) > most) continue;
          expect(direct + each * (10 - x)).toBeGreaterThanOrEqual(best - 1e-4);
        }
        for (const value of found) expect(value).toBeLessThan(below);
        if (found.length > 0) expect(goals.ahead(from)).toBeLessThanOrEqual(best + 1e-9);
      }),
    );
  });

  it('B3: every place offered leaves the way short enough', () => {
    fc.assert(
      fc.property(planPoint, share, length, (from, each, over) => {
        const most = gap(from, { x: 10, y: 0 }) + over;
        const { tree, head } = laid(from, most, each);
        const goals = new TreeGoals(tree, tree.chainFrom(head), Number.POSITIVE_INFINITY);
        for (const { point } of goals.from(from, 0)) {
          const whole = gap(from, point) + gap(point, { x: 10, y: 0 });
          expect(whole).toBeLessThanOrEqual(most + 1e-9);
        }
      }),
    );
  });

  it('G3: does not join it where it begins inside what only it may pass', () => {
    const about = convexHull<'kit'>([
      { x: -11, y: -1 },
      { x: -9, y: -1 },
      { x: -9, y: 1 },
      { x: -11, y: 1 },
    ]);
    if (!about) throw new Error('a square was expected');
    const joinsAtStart = (free: ReadonlySet<number>): boolean => {
      const tangents = new Tangents<'kit'>([about], undefined);
      const end = tangents.place({ x: 10, y: 0 });
      const first = { own: [tangents.place({ x: -10, y: 0 }, new Set([0])), end], most: 100 };
      const second = { own: [tangents.place({ x: -30, y: 0 }, free), end], most: 100 };
      const tree = new WayTree(tangents, [first, second], { each: 0.5, once: 0.5 });
      const start = tree.lay(0, first);
      const head = tree.lay(1, second);
      if (!start || !head) throw new Error('laid ways were expected');
      const goals = new TreeGoals(tree, tree.chainFrom(head), Number.POSITIVE_INFINITY);
      return goals.from(head.place.point, 0).some(({ node, splits }) => node === start && !splits);
    };
    expect(joinsAtStart(new Set())).toBe(false);
    expect(joinsAtStart(new Set([1]))).toBe(false);
    expect(joinsAtStart(new Set([0]))).toBe(true);
  });
});
