import { expect, it } from 'vitest';
import { toRadians } from '../../src/units/angle.ts';
import type { Degrees, Mm, Radians } from '../../src/units/quantity.ts';

it('quantities of different kinds do not compile where another is expected, bare numbers do', () => {
  const turn: Radians = Math.PI;
  const height: Mm = 12;
  // @ts-expect-error Radians are not Degrees.
  const mixed: Degrees = turn;
  // @ts-expect-error A length is not an angle.
  const wrong = toRadians(height);
  expect(mixed).toBe(Math.PI);
  expect(wrong).toBeCloseTo(0.2094, 4);
  expect(toRadians(180)).toBe(Math.PI);
});
