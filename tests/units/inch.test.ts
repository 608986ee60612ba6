import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fromInches, MM_PER_FOOT, MM_PER_INCH, toInches } from '../../src/units/inch.ts';

it('an inch is 25.4 mm exactly (international yard and pound agreement, 1959)', () => {
  expect(MM_PER_INCH).toBe(25.4);
  expect(fromInches(1)).toBe(25.4);
  expect(fromInches(12)).toBeCloseTo(MM_PER_FOOT, 10);
});

it('nominal sizes are exact: a 14 in drum is 355.6 mm, a 22 in one 558.8 mm', () => {
  expect(fromInches(14)).toBeCloseTo(355.6, 10);
  expect(fromInches(22)).toBeCloseTo(558.8, 10);
});

it('inches and mm go over into each other', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (inches) => {
      expect(toInches(fromInches(inches))).toBeCloseTo(inches, 8);
    }),
  );
});
