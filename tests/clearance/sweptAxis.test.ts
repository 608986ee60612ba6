import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AxisField } from '../../src/clearance/axisField.ts';
import { BallsBelow } from '../../src/clearance/ballsBelow.ts';
import { BELOW, floorBall } from '../../src/clearance/floorBudget.ts';
import { SPOT, type StickFloor } from '../../src/clearance/floorField.ts';
import { SweptAxis } from '../../src/clearance/sweptAxis.ts';
import type { Side } from '../../src/player/hands.ts';

/** Spots from the throne to each side, and in front of it and behind. */
const [ASIDE, AHEAD] = [35, 26];
const [columns, rows] = [2 * ASIDE, 2 * AHEAD];
const [left, bottom] = [(0.5 - ASIDE) * SPOT, (0.5 - AHEAD) * SPOT];
const emptyFloor = (): StickFloor => ({
  left,
  bottom,
  columns,
  rows,
  heights: new Float32Array(columns * rows).fill(Number.POSITIVE_INFINITY),
});

const value = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const place = fc.tuple(value(-260, 260), value(-210, 210), value(500, 800));
type Place = readonly [number, number, number];
/** Where an axis' ends are at first, and where at last. */
const sweep = fc
  .tuple(
    place,
    place,
    fc.tuple(value(-80, 80), value(-80, 80), value(-60, 60)),
    fc.tuple(value(-80, 80), value(-80, 80), value(-60, 60)),
  )
  .map(([a, b, c, d]): readonly Place[] => [
    a,
    b,
    [a[0] + c[0], a[1] + c[1], a[2] + c[2]],
    [b[0] + d[0], b[1] + d[1], b[2] + d[2]],
  ]);
type Sweep = readonly Place[];

/** The field of balls of a radius about swept axes, one after the other. */
function floorOf(sweeps: readonly Sweep[], radius: number, { side = 'right' as Side } = {}) {
  const floor = emptyFloor();
  const ball = floorBall(radius);
  const field = new AxisField(floor, ball);
  for (const places of sweeps) {
    const axis = new SweptAxis(field, Float64Array.from(places.flat()));
    field.turnTo(side);
    axis.take(0, 3, 6, 9);
    axis.lower(ball.bow, ball.bow);
  }
  new BallsBelow(floor, field).lower(ball);
  return floor;
}

/** A point of the axis at a share of its length and of the time. */
const pointOf = ([a, b, c, d]: Sweep, s: number, t: number): Place => {
  const at = (k: 0 | 1 | 2): number =>
    ((a?.[k] ?? 0) * (1 - s) + (b?.[k] ?? 0) * s) * (1 - t) +
    ((c?.[k] ?? 0) * (1 - s) + (d?.[k] ?? 0) * s) * t;
  return [at(0), at(1), at(2)];
};

const radius = fc.constantFrom(6, 20, 45);

describe('rule F3: balls about the places of swept axes', () => {
  it('come down at least as far as a ball about any point that is as far off the axis as it may be, over all of a cell', () => {
    const share = value(0, 1);
    const turn = value(0, 2 * Math.PI);
    fc.assert(
      fc.property(
        sweep,
        radius,
        fc.array(fc.tuple(share, share, turn, turn), { minLength: 20, maxLength: 20 }),
        (axis, r, points) => {
          const floor = floorOf([axis], r);
          // As much aside as down.
          const off = floorBall(r).bow * Math.SQRT1_2;
          for (const [s, t, where, about] of points) {
            const [x, y, z] = pointOf(axis, s, t);
            const ball = [x + off * Math.cos(where), y + off * Math.sin(where), z - off] as const;
            for (const share of [0, 0.7, 0.999]) {
              const px = ball[0] + share * r * Math.cos(about);
              const py = ball[1] + share * r * Math.sin(about);
              const column = Math.round((px - left) / SPOT);
              const row = Math.round((py - bottom) / SPOT);
              if (column < 0 || row < 0 || column >= columns || row >= rows) continue;
              const under = ball[2] - r * Math.sqrt(1 - share * share);
              expect(floor.heights[row * columns + column]).toBeLessThanOrEqual(under);
            }
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('come down nowhere more than 15 mm below the lowest of them within 15 mm', () => {
    fc.assert(
      fc.property(sweep, radius, (axis, r) => {
        const floor = floorOf([axis], r);
        const points = Array.from({ length: 61 * 61 }, (_, k) =>
          pointOf(axis, (k % 61) / 60, Math.floor(k / 61) / 60),
        );
        for (let at = 0; at < columns * rows; at += 97) {
          const height = floor.heights[at] ?? Number.NaN;
          if (!Number.isFinite(height)) continue;
          const x = left + (at % columns) * SPOT;
          const y = bottom + Math.floor(at / columns) * SPOT;
          const lowest = Math.min(
            ...points.map(([px, py, pz]) => {
              // Samples of the axis are up to some 6 mm apart.
              const gap = Math.max(0, Math.hypot(px - x, py - y) - BELOW - 4);
              return gap <= r ? pz - Math.sqrt(r * r - gap * gap) : Number.POSITIVE_INFINITY;
            }),
          );
          expect(height).toBeGreaterThanOrEqual(lowest - BELOW);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('are the same in whatever order the axes come, and none of one axis is lost beside others', () => {
    fc.assert(
      fc.property(fc.array(sweep, { minLength: 2, maxLength: 4 }), radius, (axes, r) => {
        const { heights } = floorOf(axes, r);
        expect(floorOf(axes.toReversed(), r).heights).toEqual(heights);
        const alone = axes.map((axis) => floorOf([axis], r).heights);
        expect(heights).toEqual(
          heights.map((_, at) => Math.min(...alone.map((one) => one[at] ?? Number.NaN))),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('of a left hand are mirrored bit for bit', () => {
    fc.assert(
      fc.property(sweep, radius, (axis, r) => {
        const { heights } = floorOf([axis], r);
        const mirrored = floorOf([axis], r, { side: 'left' }).heights;
        expect(heights).toEqual(
          heights.map(
            (_, at) => mirrored[at - (at % columns) + columns - 1 - (at % columns)] ?? Number.NaN,
          ),
        );
      }),
      { numRuns: 100 },
    );
  });
});

describe('a swept axis that may be too far off', () => {
  const still: Sweep = [
    [-100, 0, 700],
    [100, 0, 700],
    [-100, 0, 700],
    [100, 0, 700],
  ];

  it('changes nothing and is left open, all of it', () => {
    const floor = emptyFloor();
    const field = new AxisField(floor, floorBall(10));
    const axis = new SweptAxis(field, Float64Array.from(still.flat()));
    axis.take(0, 3, 6, 9);
    axis.lower(5, 5);
    expect(axis.part).toEqual({ from: 0, to: 1, openFrom: 0, openTo: 1 });
    expect(field.lowest.every((height) => height === Number.POSITIVE_INFINITY)).toBe(true);
  });

  it('is left only where it may be too far off, and is open only where the field may be above it', () => {
    const floor = emptyFloor();
    const field = new AxisField(floor, floorBall(10));
    const axis = new SweptAxis(field, Float64Array.from(still.flat()));
    axis.take(0, 3, 6, 9);
    axis.lower(1, 0);
    expect(axis.part.from).toBe(0);
    expect(axis.part.to).toBeGreaterThan(0.55);
    expect(axis.part.to).toBeLessThan(1);
    const sheet = [-150, -60, 680, 150, -60, 680, -150, 60, 680, 150, 60, 680];
    const below = new SweptAxis(field, Float64Array.from(sheet));
    below.take(0, 3, 6, 9);
    below.lower(0, 0);
    Object.assign(axis.part, { from: 0, to: 1, openFrom: 0, openTo: 1 });
    axis.lower(5, 5);
    expect(axis.part.openTo).toBeLessThanOrEqual(axis.part.openFrom);
  });

  it('counts anywhere within reach when nothing is to be left', () => {
    const floor = emptyFloor();
    const field = new AxisField(floor, floorBall(10));
    const axis = new SweptAxis(field, Float64Array.from(still.flat()));
    axis.leavesNothing = true;
    axis.take(0, 3, 6, 9);
    axis.lower(30, 30);
    new BallsBelow(floor, field).lower(floorBall(10));
    for (const [x, y] of [
      [0, 0],
      [-120, 0],
      [100, 25],
      [0, -30],
    ] as const) {
      const at = Math.round((y - bottom) / SPOT) * columns + Math.round((x - left) / SPOT);
      expect(floor.heights[at]).toBeLessThanOrEqual(700 - 30 - 10);
    }
  });
});
