import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Bounds,
  boundsMeet,
  boundsOfCapsule,
  boundsOfCylinder,
  boundsOverPlan,
  joined,
} from '../../src/geometry/bounds.ts';
import { along, length, subtract, unit, type Vec3, vec } from '../../src/geometry/vector.ts';
import { outsideCylinder } from './axialSolids.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc
  .tuple(number(-300, 300), number(-300, 300), number(-300, 300))
  .map((p) => vec(...p));
const direction = point.filter((p) => length(p) > 1).map((p) => unit(p, vec(0, 0, 1)));
const holds = ({ low, high }: Bounds, p: Vec3) =>
  p.x >= low.x - 1e-6 &&
  p.x <= high.x + 1e-6 &&
  p.y >= low.y - 1e-6 &&
  p.y <= high.y + 1e-6 &&
  p.z >= low.z - 1e-6 &&
  p.z <= high.z + 1e-6;

describe('bounds', () => {
  it('of a capsule hold every point within its radius of its axis', () => {
    fc.assert(
      fc.property(fc.tuple(point, point), number(1, 50), number(0, 1), direction, (...drawn) => {
        const [[a, b], radius, t, d] = drawn;
        const surface = along(along(a, subtract(b, a), t), d, radius);
        expect(holds(boundsOfCapsule({ a, b, radius }), surface)).toBe(true);
      }),
    );
  });

  it('of a cylinder hold every point inside it', () => {
    fc.assert(
      fc.property(
        direction,
        number(10, 300),
        number(1, 200),
        point,
        (axis, radius, halfHeight, p) => {
          const cylinder = { centre: vec(10, 20, 30), axis, radius, halfHeight };
          fc.pre(outsideCylinder(p, cylinder) <= 0);
          expect(holds(boundsOfCylinder(cylinder), p)).toBe(true);
        },
      ),
    );
  });

  it('of an upright disc are as tight as worked by hand', () => {
    const box = boundsOfCylinder({
      centre: vec(0, 0, 0),
      axis: vec(0, 1, 0),
      radius: 40,
      halfHeight: 5,
    });
    expect(box).toEqual({ low: vec(-40, -5, -40), high: vec(40, 5, 40) });
  });

  it('over the plan hold what lies near the line between two spots, from the plan up, and of none meet nothing', () => {
    fc.assert(
      fc.property(fc.tuple(point, point), number(0, 50), number(0, 1), direction, (...drawn) => {
        const [[a, b], margin, t, d] = drawn;
        const near = along(along(a, subtract(b, a), t), d, margin);
        const box = boundsOverPlan([a, b], margin, 100);
        expect(holds(box, vec(near.x, near.y, 100 * t))).toBe(true);
        expect(boundsMeet(boundsOverPlan([], margin, 100), box)).toBe(false);
      }),
    );
    const box = boundsOverPlan([vec(1, 2, 0), vec(-3, 4, 0)], 5, 6);
    expect(box).toEqual({ low: vec(-8, -3, 0), high: vec(6, 9, 6) });
  });

  it('joined hold each one, and meet what one of them meets', () => {
    const p = boundsOfCapsule({ a: vec(0, 0, 0), b: vec(0, 0, 0), radius: 1 });
    const q = boundsOfCapsule({ a: vec(9, 0, 0), b: vec(9, 0, 0), radius: 1 });
    expect(joined([p, q])).toEqual({ low: vec(-1, -1, -1), high: vec(10, 1, 1) });
    expect(joined([])).toBeUndefined();
    expect(boundsMeet(p, q)).toBe(false);
    expect(boundsMeet(p, boundsOfCapsule({ a: vec(2, 0, 0), b: vec(2, 0, 0), radius: 1 }))).toBe(
      true,
    );
  });
});
