import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ConvexPolygon, isInside } from '../../src/geometry/convexPolygon.ts';
import { leftOf } from '../../src/geometry/orientation.ts';
import type { Rectangle } from '../../src/geometry/plan.ts';
import { aheadOf, bendsRound, type Corner, sideOf, Tangents } from '../../src/geometry/tangents.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { obstacles, planPoint, polygon, shareInside } from './planScenes.ts';

function touched(
  scene: readonly ConvexPolygon[],
  region: Rectangle | undefined,
  p: Vec2,
): readonly Vec2[] {
  const tangents = new Tangents(scene, region);
  return tangents.touches(tangents.place(p), 0).map(({ to }) => to.point);
}

describe('ways that touch an obstacle', () => {
  it('V1: from a point outside lead to exactly the corners that leave the obstacle on one side', () => {
    fc.assert(
      fc.property(polygon, planPoint, (shape, p) => {
        fc.pre(!isInside(shape, p));
        const found = touched([shape], undefined, p);
        const expected = shape.corners.filter((corner) => {
          const sides = shape.corners.map((other) => leftOf(p, corner, other));
          return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
        });
        expect(found).toEqual(expected);
      }),
    );
  });

  it('V3: lead to no corner outside the region', () => {
    const region = { low: { x: -3, y: -3 }, high: { x: 3, y: 3 } };
    fc.assert(
      fc.property(polygon, planPoint, (shape, p) => {
        const all = touched([shape], undefined, p);
        const within = all.filter(({ x, y }) => Math.abs(x) <= 3 && Math.abs(y) <= 3);
        expect(touched([shape], region, p)).toEqual(within);
      }),
    );
  });

  it('V2: are blocked by exactly the obstacles with some of the stretch inside, those left out aside', () => {
    fc.assert(
      fc.property(obstacles(6), planPoint, planPoint, fc.nat(5), (scene, a, b, out) => {
        fc.pre(a.x !== b.x || a.y !== b.y);
        const met = scene.flatMap((o, i) => (i !== out && shareInside(o, a, b) > 1e-12 ? [i] : []));
        const tangents = new Tangents(scene, undefined);
        const free = tangents.place(a, new Set([out]));
        expect(tangents.blockers(free, tangents.place(b))).toEqual(met);
        expect(tangents.blockers(tangents.place(b), free)).toEqual(met);
      }),
    );
  });

  it('V4: to and from corners are the same in both directions and when asked again', () => {
    fc.assert(
      fc.property(obstacles(5), planPoint, (scene, p) => {
        const tangents = new Tangents(scene, undefined);
        const here = tangents.place(p);
        const all = scene.flatMap((_, i) => tangents.touches(here, i)).map(({ to }) => to);
        for (const corner of [...all, here]) {
          for (const other of [...all, ...all]) {
            const [a, b] = [corner.point, other.point];
            if (a.x === b.x && a.y === b.y) continue;
            const met = scene.flatMap((o, i) => (shareInside(o, a, b) > 1e-12 ? [i] : []));
            expect(tangents.blockers(corner, other)).toEqual(met);
            expect(tangents.blockers(other, corner)).toEqual(met);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it('V1: find every corner of a path that goes on, where it may lie ahead', () => {
    fc.assert(
      fc.property(obstacles(3), planPoint, (scene, p) => {
        const tangents = new Tangents(scene, undefined);
        for (const { to } of tangents.touches(tangents.place(p), 0)) {
          const { corner } = to;
          const cameBy = sideOf(corner, p, corner.point);
          const ahead = aheadOf(corner, p, cameBy);
          for (const [i] of scene.entries()) {
            const ways = tangents.touches(to, i).filter(({ to: { point } }) => {
              return (
                bendsRound(corner, p, point) && (point.x !== to.point.x || point.y !== to.point.y)
              );
            });
            if (ahead && ways.length > 0) expect(tangents.mayLieAhead(ahead, i)).toBe(true);
          }
        }
      }),
    );
  });
});

describe('V1: a path over a corner', () => {
  // The obstacle lies above: a path along below it from left to right may only turn left, up and round it.
  const corner: Corner = {
    point: { x: 0, y: 0 },
    before: { x: -1, y: 1 },
    after: { x: 1, y: 1 },
    number: 0,
    obstacle: 0,
  };
  it.each([
    ['turns round the obstacle', { x: -2, y: -1 }, { x: 2, y: 1 }, true],
    ['goes straight on', { x: -2, y: 0 }, { x: 2, y: 0 }, true],
    ['turns away from it', { x: -2, y: 0 }, { x: 2, y: -1 }, false],
    ['runs into it', { x: 0, y: -2 }, { x: 2, y: 0 }, false],
    ['turns back past it', { x: -2, y: 0 }, { x: -2, y: -1 }, false],
    ['begins at the corner', { x: 0, y: 0 }, { x: 2, y: -1 }, true],
  ])('that %s', (_, from, to, expected) => {
    expect(bendsRound(corner, from, to)).toBe(expected);
    expect(bendsRound(corner, to, from)).toBe(expected);
  });
});
