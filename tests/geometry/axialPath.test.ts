import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AxialPath } from '../../src/geometry/axialPath.ts';
import { length, unit, vec } from '../../src/geometry/vector.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc
  .tuple(number(-400, 400), number(-400, 400), number(-400, 400))
  .map((p) => vec(...p));
const direction = point.filter((p) => length(p) > 1).map((p) => unit(p, vec(0, 0, 1)));
const path = fc
  .tuple(point, point, point, direction)
  .map(([a, b, centre, axis]) => new AxialPath([a, b], centre, axis));
const part = fc
  .tuple(number(0, 1), number(0, 1))
  .map(([p, q]) => [Math.min(p, q), Math.max(p, q)] as const);

describe('AxialPath', () => {
  it('agrees with a rod beside an upright axis, worked by hand', () => {
    // From 30 mm beside and 10 below to 30 beside and 70 above, passing 30 mm from the axis at its nearest, halfway.
    const rod = new AxialPath([vec(-40, 30, -10), vec(40, 30, 70)], vec(0, 0, 0), vec(0, 0, 1));
    expect(rod.fromAxis(0)).toBeCloseTo(50, 9);
    expect(rod.fromAxis(0.5)).toBeCloseTo(30, 9);
    expect(rod.height(0.5)).toBeCloseTo(30, 9);
    expect(rod.leastFromAxis(0, 1)).toBeCloseTo(30, 9);
    expect(rod.mostFromAxis(0, 1)).toBeCloseTo(50, 9);
    expect(rod.leastHeight(0, 1)).toBe(0);
    expect(rod.leastHeight(0.5, 1)).toBeCloseTo(30, 9);
  });

  it('never goes outside the bounds it gives for a part', () => {
    fc.assert(
      fc.property(path, part, number(0, 1), (segment, [low, high], share) => {
        const t = low + share * (high - low);
        const slack = 1e-5;
        expect(segment.height(t)).toBeGreaterThanOrEqual(segment.leastHeight(low, high) - slack);
        expect(segment.fromAxis(t)).toBeGreaterThanOrEqual(
          segment.leastFromAxis(low, high) - slack,
        );
        expect(segment.fromAxis(t)).toBeLessThanOrEqual(segment.mostFromAxis(low, high) + slack);
      }),
    );
  });
});
