import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pixelsOf } from '../../../src/views/sheets/pngOf.ts';

const side = fc.double({ min: 20, max: 3000, noNaN: true });

test('a picture is never larger than a tablet’s canvas holds, and keeps the shape of its paper', () => {
  fc.assert(
    fc.property(side, side, (width, height) => {
      const pixels = pixelsOf(width, height);
      expect(pixels.width * pixels.height).toBeLessThanOrEqual(12_000_000);
      expect(Math.max(pixels.width, pixels.height)).toBeLessThanOrEqual(4096);
      const stretched = pixels.width / width / (pixels.height / height);
      expect(Math.abs(stretched - 1)).toBeLessThan(2 / Math.min(pixels.width, pixels.height));
    }),
  );
});

test('A4 has 300 pixels to the inch', () => {
  expect(pixelsOf(297, 210)).toEqual({ width: 3507, height: 2480 });
});
