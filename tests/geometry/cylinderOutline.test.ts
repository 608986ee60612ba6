import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cylinderOutline } from '../../src/geometry/cylinderOutline.ts';
import { outsideOutline } from '../../src/geometry/planSegments.ts';
import { add, cross, scale, unit, vec } from '../../src/geometry/vector.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const axis = fc
  .tuple(number(-1, 1), number(-1, 1), number(-1, 1))
  .map(([x, y, z]) => unit(vec(x, y, z), vec(0, 0, 1)));
const solid = fc.record({
  centre: fc.tuple(number(-900, 900), number(-900, 900)).map(([x, y]) => vec(x, y, 0)),
  axis,
  radius: number(20, 400),
  halfHeight: number(2, 300),
});

test('the outline of a cylinder holds every point of it, and is nowhere more than 1 % of the radius inside it', () => {
  fc.assert(
    fc.property(solid, number(0, 2 * Math.PI), number(-1, 1), (cylinder, turn, up) => {
      const outline = cylinderOutline(cylinder);
      const { centre, radius, halfHeight } = cylinder;
      const n = cylinder.axis;
      const helper = Math.abs(n.x) < 0.9 ? vec(1, 0, 0) : vec(0, 1, 0);
      const u = unit(cross(n, helper), vec(0, 0, 1));
      const v = cross(n, u);
      const rim = add(scale(u, radius * Math.cos(turn)), scale(v, radius * Math.sin(turn)));
      const p = add(add(centre, scale(n, up * halfHeight)), rim);
      expect(outsideOutline(outline, p)).toBeLessThanOrEqual(radius * 0.01 + 1e-6);
    }),
  );
});

test('looked at along its axis it is round, across its axis a rectangle', () => {
  const size = (outline: readonly { x: number; y: number }[], axisOf: 'x' | 'y') =>
    Math.max(...outline.map((p) => p[axisOf])) - Math.min(...outline.map((p) => p[axisOf]));
  const round = cylinderOutline({
    centre: vec(0, 0, 0),
    axis: vec(0, 0, 1),
    radius: 100,
    halfHeight: 30,
  });
  expect(size(round, 'x')).toBeCloseTo(200, 6);
  expect(size(round, 'y')).toBeCloseTo(200, 6);
  const flat = cylinderOutline({
    centre: vec(0, 0, 0),
    axis: vec(0, 1, 0),
    radius: 100,
    halfHeight: 30,
  });
  expect(size(flat, 'x')).toBeCloseTo(200, 6);
  expect(size(flat, 'y')).toBeCloseTo(60, 6);
});
