import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxBeside } from '../../../src/editor/labels/boxBeside.ts';
import { reservedZones } from '../../../src/editor/labels/reserved.ts';

const form = { text: 'sticks, hands from 1234 mm', width: 220, height: 32 };

test('what is written beside a tapped spot stands whole on the screen, out of the bars, and not over the spot', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(
        { width: 776, height: 697 },
        { width: 820, height: 497 },
        { width: 476, height: 497 },
      ),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom(0, 66),
      (size, x, y, foot) => {
        const reserved = reservedZones(size, {
          head: true,
          legend: size.width > 740,
          foot,
          legends: { width: 240, height: 34 },
        });
        const at = { x: x * size.width, y: y * size.height };
        const box = boxBeside(at, form, { size, reserved });
        if (!box) throw new Error('expected a box for a spot on the screen');
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.top).toBeGreaterThanOrEqual(0);
        expect(box.left + box.width).toBeLessThanOrEqual(size.width);
        expect(box.top + box.height).toBeLessThanOrEqual(size.height);
        for (const zone of reserved) {
          const isOff =
            box.left + box.width <= zone.left ||
            zone.left + zone.width <= box.left ||
            box.top + box.height <= zone.top ||
            zone.top + zone.height <= box.top;
          expect(isOff).toBe(true);
        }
      },
    ),
    { numRuns: 2000 },
  );
  expect(
    boxBeside({ x: -5, y: 50 }, form, { size: { width: 776, height: 697 }, reserved: [] }),
  ).toBeUndefined();
});
