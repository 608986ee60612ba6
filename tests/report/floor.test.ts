import { expect, it } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
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

it.each([
  ['far in front', { x: 300, y: 2600 }],
  ['far to the left', { x: -2500, y: 300 }],
])('a piece %s is in the field, though no arm reaches it', (_, to) => {
  const far = movePiece(layout, 'crash-1', to);
  const spots = floorOf(far).contours.flatMap(({ rings }) => rings.flat());
  const nearest = Math.min(...spots.map(({ x, y }) => Math.hypot(x - to.x, y - to.y)));
  expect(nearest).toBeLessThan(450);
});
