import fc from 'fast-check';
import { expect, it } from 'vitest';
import { leftOf } from '../../src/geometry/orientation.ts';
import { planPoint } from './planScenes.ts';

it('a point to the left counts above 0, to the right below 0, on the line exactly 0', () => {
  const [a, b] = [
    { x: 0, y: 0 },
    { x: 2, y: 0 },
  ];
  expect(leftOf(a, b, { x: 1, y: 1 })).toBeGreaterThan(0);
  expect(leftOf(a, b, { x: 1, y: -1 })).toBeLessThan(0);
  expect(leftOf(a, b, { x: 7, y: 0 })).toBeCloseTo(0, 15);
});

it('the sign turns over when two points change places, and stays when all three move on', () => {
  fc.assert(
    fc.property(planPoint, planPoint, planPoint, (a, b, c) => {
      const sign = Math.sign(leftOf(a, b, c)) + 0;
      expect(Math.sign(leftOf(b, c, a)) + 0).toBe(sign);
      expect(Math.sign(leftOf(b, a, c)) + 0).toBe(-sign + 0);
    }),
  );
});

it('is right where plain arithmetic is not: near the line x = y, by single steps of the last binary place (the case of Kettner et al. 2008, from memory)', () => {
  const step = 2 ** -53;
  const [b, c] = [
    { x: 12, y: 12 },
    { x: 24, y: 24 },
  ];
  for (let i = 0; i < 32; i += 1) {
    for (let j = 0; j < 32; j += 1) {
      const p = { x: 0.5 + i * step, y: 0.5 + j * step };
      expect(Math.sign(leftOf(p, b, c)) + 0).toBe(Math.sign(p.y - p.x) + 0);
    }
  }
});
