import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import { gap } from '../../src/geometry/plan.ts';
import { createRouter } from '../../src/geometry/shortestPath.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { type Landing, WaySearch } from '../../src/geometry/waySearch.ts';
import { obstacles, planPoint } from './planScenes.ts';

const goal = fc.record({ point: planPoint, rest: fc.double({ min: 0, max: 20, noNaN: true }) });
const scene = fc
  .record({
    shapes: obstacles(6),
    from: planPoint,
    goals: fc.array(goal, { minLength: 1, maxLength: 4 }),
  })
  .filter(({ shapes, from, goals }) =>
    [from, ...goals.map(({ point }) => point)].every((p) => !shapes.some((o) => isInside(o, p))),
  );

describe('a search for several goals', () => {
  const search = fc.tuple(scene, fc.double({ min: 0, max: 40, noNaN: true }), fc.boolean());

  it('P1: ends where way and rest together are least, or nowhere when that is not below the limit', () => {
    fc.assert(
      fc.property(search, ([{ shapes, from, goals }, below, isSecond]) => {
        const router = createRouter(shapes);
        const { tangents } = router;
        const landings = goals.map(({ point, rest }, i) => ({
          point,
          // A landing may come without a place.
          place: i % 2 === 0 ? tangents.place(point) : undefined,
          rest,
        }));
        const search = new WaySearch<'kit', Landing<'kit'>>(tangents);
        const ends = {
          ahead: (p: Vec2) => Math.min(...goals.map(({ point, rest }) => gap(p, point) + rest)),
          from: (): readonly Landing<'kit'>[] => landings,
          accepts: () => true,
        };
        const start = tangents.place(from);
        // Whatever it searched for before leaves no trace.
        if (isSecond) search.run(tangents.place({ x: from.y, y: from.x }), ends, 30);
        const found = search.run(start, ends, below);
        const one = createRouter(shapes);
        const best = Math.min(
          ...goals.map(({ point, rest }) => {
            const way = one.route({ point: from }, { point });
            return way ? way.length + rest : Number.POSITIVE_INFINITY;
          }),
        );
        if (!found) expect(best).toBeGreaterThanOrEqual(below - 1e-9);
        else expect(found.length + found.landing.rest).toBeCloseTo(best, 6);
      }),
      { numRuns: 400 },
    );
  });

  it('goes on to the next best goal when one is not accepted after all', () => {
    const { tangents } = createRouter<'kit'>([]);
    const [near, far] = [1, 5].map((x) => {
      const point = { x, y: 0 };
      return { point, place: tangents.place(point), rest: 0 };
    });
    if (!near || !far) throw new Error('two landings were expected');
    const goals = {
      ahead: () => 0,
      from: () => [near, far],
      accepts: (landing: Landing<'kit'>) => landing !== near,
    };
    const found = new WaySearch(tangents).run(tangents.place({ x: 0, y: 0 }), goals, 100);
    expect(found?.landing).toBe(far);
    expect(found?.length).toBe(5);
  });
});
