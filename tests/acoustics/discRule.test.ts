import { describe, expect, it } from 'vitest';
import { type DiscRule, discRule, ruleFor } from '../../src/acoustics/discRule.ts';

const points = (rule: DiscRule): { x: number; y: number }[] =>
  Array.from({ length: rule.length / 2 }, (_, i) => ({
    x: rule[2 * i] ?? Number.NaN,
    y: rule[2 * i + 1] ?? Number.NaN,
  }));
const all = [3, 4, 8, 17, 36].map(discRule);

describe('H13 points over a disc', () => {
  it('three rings are 37 points, none is one in the middle', () => {
    expect(points(discRule(3))).toHaveLength(37);
    expect(points(discRule(0))).toEqual([{ x: 0, y: 0 }]);
  });

  it('are area-even: any circle about the middle holds its share of points, to half a ring', () => {
    for (const rule of all) {
      const radii = points(rule).map(({ x, y }) => Math.hypot(x, y));
      const halfRing = Math.sqrt(rule.length / 2) / rule.length;
      for (const radius of [0.3, 0.5, 0.7, 0.9, 1]) {
        const share = radii.filter((r) => r <= radius).length / radii.length;
        expect(Math.abs(share - radius * radius)).toBeLessThan(4 * halfRing);
      }
    }
  });

  it('have the moments of a full disc: mean 0, mean square of each coordinate 1/4', () => {
    for (const rule of all) {
      const mean = (f: (p: { x: number; y: number }) => number) =>
        points(rule).reduce((sum, p) => sum + f(p), 0) / (rule.length / 2);
      expect(mean(({ x }) => x)).toBeCloseTo(0, 12);
      expect(mean(({ y }) => y)).toBeCloseTo(0, 12);
      expect(mean(({ x }) => x * x)).toBeCloseTo(0.25, 2);
      expect(mean(({ y }) => y * y)).toBeCloseTo(
        mean(({ x }) => x * x),
        12,
      );
      expect(mean(({ x, y }) => x * y)).toBeCloseTo(0, 12);
    }
  });

  it('mirror into themselves about both axes', () => {
    for (const rule of all) {
      const text = (sx: number, sy: number) =>
        points(rule)
          .map(({ x, y }) => `${(sx * x + 0).toFixed(9)} ${(sy * y + 0).toFixed(9)}`)
          .map((p) => p.replaceAll('-0.000000000', '0.000000000'))
          .sort();
      expect(text(-1, 1)).toEqual(text(1, 1));
      expect(text(1, -1)).toEqual(text(1, 1));
    }
  });
});

describe('H14 the rule for a distance', () => {
  it('never has fewer than 37 points', () => {
    expect(ruleFor(200, 5000).length / 2).toBe(37);
  });

  it('has points no farther apart than 0.6 of the distance, in the usual range', () => {
    for (const radius of [75, 178, 254]) {
      for (const distance of [20, 45, 100, 300]) {
        const spacing = radius * Math.sqrt(Math.PI / (ruleFor(radius, distance).length / 2));
        expect(spacing).toBeLessThanOrEqual(0.6 * distance);
      }
    }
  });
});
