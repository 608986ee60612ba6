import fc from 'fast-check';
import { expect, it } from 'vitest';
import { obstacleRound } from '../../src/cabling/obstacle.ts';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import { gap, nearestOnSegment } from '../../src/geometry/plan.ts';
import { toDeck } from '../../src/rig/deckFrame.ts';

const point = fc.record({
  x: fc.integer({ min: -900, max: 900 }),
  y: fc.integer({ min: -900, max: 900 }),
});
const points = fc.array(point, { minLength: 1, maxLength: 5 });
const place = fc.record({
  x: fc.integer({ min: -900, max: 900 }),
  y: fc.integer({ min: -900, max: 900 }),
  turn: fc.integer({ min: 0, max: 359 }),
});

it('no point nearer than the distance to keep is outside the outline, however the kit is turned', () => {
  fc.assert(
    fc.property(points, place, fc.integer({ min: 1, max: 300 }), (round, kit, keepAway) => {
      const keeping = { keepAway, toDeck: (p: { x: number; y: number }) => toDeck({ kit }, p) };
      const shape = { kind: 'foot', owner: 'stand', points: round, radius: 8 } as const;
      const [found] = obstacleRound(shape, keeping);
      if (!found) throw new Error('an obstacle was expected');
      for (const p of found.body.corners) {
        expect(isInside(found.outline, p)).toBe(true);
        const { corners } = found.outline;
        const nearest = corners.map((a, i) => {
          const b = corners[(i + 1) % corners.length] ?? a;
          return gap(p, nearestOnSegment(a, b, p));
        });
        expect(Math.min(...nearest)).toBeGreaterThan(keepAway - 1e-6);
      }
    }),
  );
});

it('is turned with the kit: the same corners as those of the unturned one, turned', () => {
  fc.assert(
    fc.property(points, place, (round, kit) => {
      const shape = { kind: 'foot', owner: 'stand', points: round, radius: 8 } as const;
      const [still] = obstacleRound(shape, { keepAway: 50, toDeck: ({ x, y }) => ({ x, y }) });
      const [turned] = obstacleRound(shape, { keepAway: 50, toDeck: (p) => toDeck({ kit }, p) });
      for (const { x, y } of still?.outline.corners ?? []) {
        const there = toDeck({ kit }, { x, y });
        const nearest = (turned?.outline.corners ?? []).map((corner) => gap(corner, there));
        expect(Math.min(...nearest)).toBeLessThan(1e-6);
      }
    }),
  );
});

it('a line without width is no obstacle', () => {
  const shape = { kind: 'kick', owner: 'kick', points: [{ x: 0, y: 0 }], radius: 0 } as const;
  expect(obstacleRound(shape, { keepAway: 50, toDeck: ({ x, y }) => ({ x, y }) })).toEqual([]);
});
