import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPlaceNumbers } from '../../src/geometry/placeNumbers.ts';

const coordinate = fc.constantFrom(-1.5, -0, 0, 1e-9, 2, 1e6);

describe('numbers of places', () => {
  it('are the same exactly for the same coordinates, and count up from 0', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ x: coordinate, y: coordinate })), (places) => {
        const numberOf = createPlaceNumbers();
        const numbers = places.map((place) => numberOf(place));
        const texts = places.map(({ x, y }) => `${x},${y}`);
        const inOrder = [...new Set(texts)];
        expect(numbers).toEqual(texts.map((text) => inOrder.indexOf(text)));
      }),
    );
  });
});
