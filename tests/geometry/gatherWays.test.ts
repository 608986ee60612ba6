import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gatherWays } from '../../src/geometry/gatherWays.ts';
import { wayLength } from '../../src/geometry/plan.ts';
import { createRouter } from '../../src/geometry/shortestPath.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import type { GatherWeights } from '../../src/geometry/wayTree.ts';
import { cheapestTree, costOf, type GatherScene, gatherScene, waysOf } from './gatherScenes.ts';
import { shareInside } from './planScenes.ts';

const even: GatherWeights = { each: 0.5, once: 0.5 };
const weights = fc.constantFrom(even, { each: 0.8, once: 0.2 }, { each: 0.3, once: 0.7 });

function gathered(scene: GatherScene, longest: number, by: GatherWeights) {
  const given = waysOf(scene, longest);
  if (!given) return undefined;
  const own = given.ways.map((way) => way.own.map(({ point }) => point));
  const most = given.ways.map((way) => way.most);
  return { own, most, ways: gatherWays(given.tangents, given.ways, by) };
}

describe('ways gathered with each other', () => {
  it('H2: cost at most 5 % more than the cheapest of all trees over the corners, none longer than 1.3 times its own', () => {
    fc.assert(
      fc.property(gatherScene(6, 4), weights, (scene, by) => {
        const found = gathered(scene, 1.3, by);
        if (!found) return;
        const cheapest = cheapestTree(scene, found.most, by);
        expect(costOf(found.ways, by)).toBeLessThanOrEqual(1.05 * cheapest + 1e-9);
      }),
      { numRuns: 150 },
    );
  });

  it('H2: the same without a limit to their lengths', () => {
    fc.assert(
      fc.property(gatherScene(5, 4), weights, (scene, by) => {
        const found = gathered(scene, 100, by);
        if (!found) return;
        const cheapest = cheapestTree(scene, found.most, by);
        expect(costOf(found.ways, by)).toBeLessThanOrEqual(1.05 * cheapest + 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('B3, V2: keep their ends, keep off every obstacle and become no longer than they may', () => {
    const longest = fc.constantFrom(1, 1.1, 1.3, 2);
    fc.assert(
      fc.property(gatherScene(9, 7), longest, weights, (scene, times, by) => {
        const found = gathered(scene, times, by);
        if (!found) return;
        for (const [i, way] of found.ways.entries()) {
          expect(way[0]).toEqual(scene.starts[i]);
          expect(way.at(-1)).toEqual(scene.end);
          expect(wayLength(way)).toBeLessThanOrEqual((found.most[i] ?? 0) + 1e-6);
          for (const [k, q] of way.entries()) {
            const p = way[k - 1] ?? q;
            for (const o of scene.scene) expect(shareInside(o, p, q)).toBeLessThan(1e-6);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('H3: in a hurry keep the same rules, and still cost no more than each alone', () => {
    fc.assert(
      fc.property(gatherScene(12, 6), weights, (scene, by) => {
        const given = waysOf(scene, 1.3);
        if (!given) return;
        const quick = gatherWays(given.tangents, given.ways, by, true);
        for (const [i, way] of quick.entries()) {
          expect(way[0]).toEqual(scene.starts[i]);
          expect(way.at(-1)).toEqual(scene.end);
          expect(wayLength(way)).toBeLessThanOrEqual((given.ways[i]?.most ?? 0) + 1e-6);
          for (const [k, q] of way.entries()) {
            for (const o of scene.scene)
              expect(shareInside(o, way[k - 1] ?? q, q)).toBeLessThan(1e-6);
          }
        }
        const own = given.ways.map((way) => way.own.map(({ point }) => point));
        expect(costOf(quick, by)).toBeLessThanOrEqual(costOf(own, by) + 1e-6);
      }),
    );
  });

  it('H1: never cost more together than each on its own shortest way', () => {
    fc.assert(
      fc.property(gatherScene(12, 6), weights, (scene, by) => {
        const found = gathered(scene, 1.3, by);
        if (!found) return;
        expect(costOf(found.ways, by)).toBeLessThanOrEqual(costOf(found.own, by) + 1e-6);
      }),
    );
  });

  it('stay the shortest when only their own lengths count, nearly', () => {
    fc.assert(
      fc.property(gatherScene(6, 5), (scene) => {
        const found = gathered(scene, 2, { each: 1, once: 1e-9 });
        if (!found) return;
        for (const [i, way] of found.ways.entries()) {
          expect(wayLength(way)).toBeLessThan(wayLength(found.own[i] ?? []) + 1e-4);
        }
      }),
    );
  });

  it('are none when there is none', () => {
    expect(gatherWays(createRouter<'kit'>([]).tangents, [], even)).toEqual([]);
  });
});

describe('J1, by hand, on an empty floor', () => {
  const fromBothSides = (by: GatherWeights): readonly Vec2[] => {
    const scene = {
      scene: [],
      starts: [
        { x: -4, y: 3 },
        { x: 4, y: 3 },
      ],
      end: { x: 0, y: -9 },
    };
    return gathered(scene, 10, by)?.ways[0] ?? [];
  };

  it('two ways that cost the same apart as together meet at 120 degrees (Fermat)', () => {
    const [, meeting] = fromBothSides({ each: 1e-9, once: 1 });
    expect(meeting?.x).toBeCloseTo(0, 3);
    expect(meeting?.y).toBeCloseTo(3 - 4 / Math.sqrt(3), 3);
  });

  it('two ways meet where their pulls balance: 2 w cos(half the angle) is what they cost together', () => {
    // 1.0 each apart, 1.5 together: cos = 0.75, so the meeting is 4 * 0.75 / sqrt(1 - 0.75^2) in front of the starts.
    const [, meeting] = fromBothSides(even);
    expect(meeting?.x).toBeCloseTo(0, 3);
    expect(meeting?.y).toBeCloseTo(3 - (4 * 0.75) / Math.sqrt(1 - 0.75 ** 2), 2);
  });
});

describe('ends side by side', () => {
  it('are each reached, from a place where the ways part', () => {
    const { tangents } = createRouter<'kit'>([]);
    const ends = [-1, 0, 1].map((x) => tangents.place({ x, y: 0 }));
    const starts = [
      { x: -1, y: 40 },
      { x: 0, y: 41 },
      { x: 1, y: 40 },
    ];
    const ways = starts.map((start, i) => {
      const end = ends[i] ?? tangents.place(start);
      return { own: [tangents.place(start), end], most: 60 };
    });
    const found = gatherWays(tangents, ways, { each: 0.2, once: 0.8 });
    expect(found.map((way) => way.at(-1))).toEqual(ends.map(({ point }) => point));
    const [first, second, third] = found;
    const shared = second?.filter((p) => first?.includes(p) && third?.includes(p)) ?? [];
    expect(wayLength(shared)).toBeGreaterThan(30);
  });
});
