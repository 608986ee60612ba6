import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scaleLength } from '../../../src/editor/shapes/scaleBar.ts';
import { LARGEST_SCALE } from '../../../src/editor/view/view.ts';

test('the bar is the longest round length that fits, in either unit', () => {
  expect(scaleLength(0.25, 180, 'mm')).toEqual({ length: 500, text: '500 mm' });
  expect(scaleLength(0.1, 180, 'mm')).toEqual({ length: 1000, text: '1.0 m' });
  expect(scaleLength(0.25, 180, 'in')).toEqual({ length: 24 * 25.4, text: '2 ft' });
  expect(scaleLength(2, 180, 'in')).toEqual({ length: 2 * 25.4, text: '2 in' });
  fc.assert(
    fc.property(
      fc.double({ min: 0.04, max: LARGEST_SCALE, noNaN: true }),
      fc.constantFrom('mm' as const, 'in' as const),
      (scale, unit) => {
        const { length } = scaleLength(scale, 180, unit);
        expect(length * scale).toBeLessThanOrEqual(180);
        expect(length * scale).toBeGreaterThan(180 / 3);
      },
    ),
  );
});
