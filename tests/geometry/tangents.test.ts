import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import { leftOf } from '../../src/geometry/orientation.ts';
import { bendsRound, type Corner, Tangents } from '../../src/geometry/tangents.ts';
import { obstacles, planPoint, polygon, shareInside } from './planScenes.ts';

describe('ways that touch an obstacle', () => {
  it('V1: from a point outside lead to exactly the corners that leave the obstacle on one side', () => {
    fc.assert(
      fc.property(polygon, planPoint, (shape, p) => {
        fc.pre(!isInside(shape, p));
        const found = new Tangents([shape], undefined).fromPoint(p, 0).map(({ point }) => point);
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
        const all = new Tangents([shape], undefined).fromPoint(p, 0);
        const some = new Tangents([shape], region).fromPoint(p, 0);
        const within = all.filter(({ point: { x, y } }) => Math.abs(x) <= 3 && Math.abs(y) <= 3);
        expect(some.map(({ point }) => point)).toEqual(within.map(({ point }) => point));
      }),
    );
  });

  it('V2: the first blocker is the first obstacle with some of the stretch inside, those left out aside', () => {
    fc.assert(
      fc.property(obstacles(6), planPoint, planPoint, fc.nat(5), (scene, a, b, out) => {
        fc.pre(a.x !== b.x || a.y !== b.y);
        const free = new Set([out]);
        const first = scene.findIndex((o, i) => i !== out && shareInside(o, a, b) > 1e-12);
        const tangents = new Tangents(scene, undefined);
        expect(tangents.firstBlocker(a, b, free) ?? -1).toBe(first);
        const by = scene.map((_, i) => i);
        expect(tangents.isBlocked(a, b, { by, free })).toBe(first >= 0);
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
    isUsable: true,
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
