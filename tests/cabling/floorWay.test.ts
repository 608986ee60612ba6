import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createFloorRouter } from '../../src/cabling/floorWay.ts';
import type { Obstacle } from '../../src/cabling/obstacle.ts';
import { isInside, passesThrough } from '../../src/geometry/convexPolygon.ts';
import { gap, wayLength } from '../../src/geometry/plan.ts';
import { disc, obstacle, rectangle, type Spot } from './scenes.ts';

const region = { low: { x: -3000, y: -2000 }, high: { x: 3000, y: 2000 } };
const spot = fc.record({
  x: fc.double({ min: -2500, max: 2500, noNaN: true }),
  y: fc.double({ min: -1500, max: 1500, noNaN: true }),
});
const stands: fc.Arbitrary<Obstacle[]> = fc
  .array(fc.tuple(spot, fc.double({ min: 20, max: 300, noNaN: true })), { maxLength: 8 })
  .map((all) => all.map(([at, radius], i) => disc(`stand-${i}`, 'hub', at, radius)));
const clear = (scene: readonly Obstacle[], ...spots: Spot[]): boolean =>
  spots.every((at) => scene.every(({ outline }) => !isInside(outline, at)));

describe('a way over the floor', () => {
  it('W1: is the straight line on an empty floor', () => {
    fc.assert(
      fc.property(spot, spot, (from, to) => {
        const way = createFloorRouter([], region).way(from, to);
        expect(wayLength(way.points)).toBe(gap(from, to));
        expect(way.through).toEqual([]);
      }),
    );
  });

  it('W1: between clear ends keeps off every outline, or names what it passes', () => {
    fc.assert(
      fc.property(stands, spot, spot, (scene, from, to) => {
        fc.pre(clear(scene, from, to));
        const { points, through } = createFloorRouter(scene, region).way(from, to);
        const passed = scene.filter(({ outline }) =>
          points.some((p, i) => passesThrough(outline, points[i - 1] ?? p, p)),
        );
        expect(passed.map(({ owner }) => owner)).toEqual(through);
        expect(points[0]).toEqual(from);
        expect(points.at(-1)).toEqual(to);
      }),
    );
  });

  it('W2: the hub over the start is left in any direction, without a detour', () => {
    const way = createFloorRouter([disc('mic', 'hub', { x: 0, y: 0 }, 30)], region).way(
      { x: 0, y: 0 },
      { x: 1000, y: 300 },
    );
    expect(way).toMatchObject({
      points: [
        { x: 0, y: 0 },
        { x: 1000, y: 300 },
      ],
      through: [],
    });
  });

  it('W2: that hub counts for a way that only passes', () => {
    const router = createFloorRouter([disc('mic', 'hub', { x: 0, y: 0 }, 30)], region);
    const way = router.way({ x: -1000, y: 0 }, { x: 1000, y: 0 });
    expect(way.points.length).toBeGreaterThan(2);
    expect(wayLength(way.points)).toBeGreaterThan(2000);
  });

  it('W3: a start in front of the kick, nearer than the distance to keep, goes forward first and then round', () => {
    const kick = obstacle('kick', 'kick', rectangle({ x: -280, y: 0 }, { x: 280, y: 450 }));
    const way = createFloorRouter([kick], region).way({ x: 0, y: 470 }, { x: 0, y: -500 });
    expect(way.through).toEqual([]);
    const [, out] = way.points;
    expect(out?.x).toBeCloseTo(0, 6);
    expect(out?.y).toBeCloseTo(500, 6);
    const rest = way.points.slice(1);
    expect(rest.every((p, i) => !passesThrough(kick.outline, rest[i - 1] ?? p, p))).toBe(true);
  });

  it('W3: the way out does not pass what really stands there while another is open', () => {
    // Between a bar and a shell: the nearest clear spot is across the bar, the open way out leads along it.
    const bar = obstacle('bar', 'kick', rectangle({ x: 0, y: 0 }, { x: 400, y: 10 }));
    const shell = obstacle('shell', 'kick', rectangle({ x: 0, y: 80 }, { x: 400, y: 300 }));
    const way = createFloorRouter([bar, shell], region).way({ x: 190, y: 15 }, { x: 190, y: -900 });
    expect(way.through).toEqual([]);
    expect(way.points[1]?.x).toBeLessThan(-30);
    expect(way.points[1]?.y).toBeGreaterThan(10);
  });

  it('W3: a way out that leads into a pocket is not taken', () => {
    // The nearest clear spot is a closed court inside the four bars; the next way out is open.
    const court = [
      obstacle('a', 'kick', rectangle({ x: -500, y: -500 }, { x: 500, y: -200 }), 0),
      obstacle('b', 'kick', rectangle({ x: -500, y: 200 }, { x: 500, y: 500 }), 0),
      obstacle('c', 'kick', rectangle({ x: -500, y: -500 }, { x: -200, y: 500 }), 0),
      obstacle('d', 'kick', rectangle({ x: 200, y: -500 }, { x: 500, y: 500 }), 0),
    ];
    const { points } = createFloorRouter(court, region).way({ x: 300, y: 0 }, { x: 1500, y: 0 });
    const [, out] = points;
    expect(out?.x).toBeCloseTo(500, 6);
  });

  it('W4: a gap narrower than the distance is passed when there is no other way, and both sides are named', () => {
    // 60 mm are open between two walls from edge to edge of the floor; 100 mm would be wanted.
    const walls = [
      obstacle('left', 'kick', rectangle({ x: -100, y: -2000 }, { x: 100, y: 0 })),
      obstacle('right', 'kick', rectangle({ x: -100, y: 60 }, { x: 100, y: 2000 })),
    ];
    const way = createFloorRouter(walls, region).way({ x: -1000, y: 30 }, { x: 1000, y: 30 });
    expect(way.points).toEqual([
      { x: -1000, y: 30 },
      { x: 1000, y: 30 },
    ]);
    expect(way.through).toEqual(['left', 'right']);
  });

  it('W4: the foot space is passed before anything solid is', () => {
    const wall = (id: string, kind: 'kick' | 'footSpace', low: number, high: number): Obstacle =>
      obstacle(id, kind, rectangle({ x: -100, y: low }, { x: 100, y: high }));
    const scene = [
      wall('kick', 'kick', -2000, 0),
      wall('pedal', 'footSpace', 0, 400),
      wall('rack', 'kick', 400, 2000),
    ];
    const way = createFloorRouter(scene, region).way({ x: -1000, y: -800 }, { x: 1000, y: -800 });
    expect(way.through).toContain('pedal');
    expect(
      scene
        .filter(({ kind }) => kind !== 'footSpace')
        .every(({ body }) =>
          way.points.every((p, i) => !passesThrough(body, way.points[i - 1] ?? p, p)),
        ),
    ).toBe(true);
  });

  it('W4, W5: through a wall from edge to edge goes the straight line, and the wall is named', () => {
    const wall = obstacle('riser', 'kick', rectangle({ x: -10, y: -2100 }, { x: 10, y: 2100 }));
    const way = createFloorRouter([wall], region).way({ x: -900, y: 5 }, { x: 900, y: -5 });
    expect(way).toMatchObject({
      points: [
        { x: -900, y: 5 },
        { x: 900, y: -5 },
      ],
      through: ['riser'],
    });
  });

  it('W5: a start that really stands in the foot space names it', () => {
    const space = obstacle('pedal', 'footSpace', rectangle({ x: 0, y: 0 }, { x: 300, y: 600 }));
    const way = createFloorRouter([space], region).way({ x: 100, y: 300 }, { x: -900, y: 300 });
    expect(way.through).toEqual(['pedal']);
  });

  it('the nearest clear point of a clear place is the place, of another one a clear point of the part asked for', () => {
    const edge = { low: { x: -2500, y: 0 }, high: { x: 2500, y: 0 } };
    fc.assert(
      fc.property(stands, spot, (scene, { x }) => {
        const at = { x, y: 0 };
        const found = createFloorRouter(scene, region).nearestClear(at, edge);
        if (clear(scene, at)) expect(found).toEqual(at);
        else if (clear(scene, found)) expect(found.y).toBe(0);
        else expect(found).toEqual(at);
      }),
    );
  });
});
