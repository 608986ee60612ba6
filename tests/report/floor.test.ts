import { expect, it } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { floorOf } from '../../src/report/floor.ts';

const layout = fivePieceOneRack('kit');

it.each([
  ['mm', 100],
  ['in', 101.6],
] as const)(
  'the stick floor in %s has a contour every %d mm, from the lowest height up',
  (units, step) => {
    const { contours, lowest, step: found } = floorOf({ ...layout, units });
    expect(found).toBe(step);
    expect(Number.isFinite(lowest)).toBe(true);
    const heights = contours.map(({ height }) => height);
    expect(heights[0]).toBeGreaterThanOrEqual(lowest);
    expect((heights[0] ?? 0) - lowest).toBeLessThan(step);
    for (const [i, height] of heights.entries()) {
      expect(height / step).toBeCloseTo(Math.round(height / step), 9);
      if (i > 0) expect(height - (heights[i - 1] ?? 0)).toBeCloseTo(step, 9);
    }
    expect(contours.every(({ rings }) => rings.length > 0)).toBe(true);
  },
);
