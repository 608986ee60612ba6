import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SPOT, type StickFloor } from '../../src/clearance/floorField.ts';
import { UnderSides } from '../../src/clearance/underSides.ts';
import { vec } from '../../src/geometry/vector.ts';
import { underSide } from '../support/underSide.ts';

const [columns, rows] = [31, 23];
const emptyFloor = (): StickFloor => ({
  left: -300,
  bottom: -200,
  columns,
  rows,
  heights: new Float32Array(columns * rows).fill(Number.POSITIVE_INFINITY),
});

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Six numbers of an axis, some of it beside the field, and a radius. */
const capsule = fc.tuple(
  fc.tuple(length(-400, 400), length(-300, 350), length(500, 900)),
  fc.tuple(length(-350, 350), length(-350, 350), length(-300, 300)),
  length(5, 120),
);
type Drawn = typeof capsule extends fc.Arbitrary<infer T> ? T : never;

const axisOf = ([[x, y, z], [dx, dy, dz]]: Drawn): Float64Array =>
  Float64Array.of(x, y, z, x + dx, y + dy, z + dz);

/** The least height of all capsules over every spot, each by halving. */
const expected = (drawn: readonly Drawn[]): readonly number[] =>
  Array.from({ length: columns * rows }, (_, at) => {
    const spot = { x: -300 + (at % columns) * SPOT, y: -200 + Math.floor(at / columns) * SPOT };
    return Math.min(
      ...drawn.map((one) => {
        const [x = 0, y = 0, z = 0, u = 0, v = 0, w = 0] = axisOf(one);
        return underSide(spot, [vec(x, y, z), vec(u, v, w)], one[2]);
      }),
    );
  });

describe('a field lowered to capsules', () => {
  it('is the least of their under sides over every spot, in whatever order they come', () => {
    fc.assert(
      fc.property(fc.array(capsule, { minLength: 1, maxLength: 4 }), (drawn) => {
        const floor = emptyFloor();
        const field = new UnderSides(floor);
        for (const one of drawn) {
          field.take(axisOf(one), 0, one[2]);
          field.lower();
        }
        const heights = expected(drawn);
        for (const [at, height] of heights.entries()) {
          const shown = floor.heights[at] ?? Number.NaN;
          // At the rim of a capsule halving may just miss it.
          if (Number.isFinite(height)) expect(shown).toBeCloseTo(height, 1);
          else if (Number.isFinite(shown)) expect(nearRim(drawn, at)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is below a capsule only when no spot would be lowered by it', () => {
    fc.assert(
      fc.property(fc.array(capsule, { minLength: 1, maxLength: 3 }), capsule, (drawn, one) => {
        const floor = emptyFloor();
        const field = new UnderSides(floor);
        for (const known of drawn) {
          field.take(axisOf(known), 0, known[2]);
          field.lower();
        }
        const before = floor.heights.slice();
        field.take(axisOf(one), 0, one[2]);
        const isBelow = field.isBelow();
        field.lower();
        if (isBelow) expect(floor.heights).toEqual(before);
      }),
      { numRuns: 200 },
    );
  });

  it('is below what it was lowered to when that comes a little higher again', () => {
    const field = new UnderSides(emptyFloor());
    field.take(Float64Array.of(-100, 0, 700, 150, 60, 640), 0, 50);
    expect(field.isBelow()).toBe(false);
    field.lower();
    field.take(Float64Array.of(-100, 0, 800, 150, 60, 740), 0, 40);
    expect(field.isBelow()).toBe(true);
  });
});

/** Whether a spot is within a hair of the edge of some capsule as seen from above. */
function nearRim(drawn: readonly Drawn[], at: number): boolean {
  const x = -300 + (at % columns) * SPOT;
  const y = -200 + Math.floor(at / columns) * SPOT;
  return drawn.some((one) => {
    const [ax = 0, ay = 0, , bx = 0, by = 0] = axisOf(one);
    const size = (bx - ax) ** 2 + (by - ay) ** 2;
    const along = size > 0 ? ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / size : 0;
    const k = Math.min(1, Math.max(0, along));
    const off = Math.hypot(x - ax - k * (bx - ax), y - ay - k * (by - ay));
    return Math.abs(off - one[2]) < 0.5;
  });
}
