import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toDecibels } from '../../src/acoustics/decibels.ts';
import { discRule, ruleFor } from '../../src/acoustics/discRule.ts';
import { PATTERNS, type Pattern, patternOf } from '../../src/acoustics/pattern.ts';
import {
  discEnergy,
  distanceToDisc,
  type Ear,
  NEAREST,
  radiatingDisc,
} from '../../src/acoustics/radiation.ts';
import { along, distance, unit, type Vec3, vec } from '../../src/geometry/vector.ts';
import { agrees, references } from './reference.ts';

const point = discRule(0);
const UP = vec(0, 0, 1);
const DOWN = vec(0, 0, -1);
const ORIGIN = vec(0, 0, 0);
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyDirection = fc
  .record({ x: mm(-1, 1), y: mm(-1, 1), z: mm(-1, 1) })
  .map((v) => unit(v, UP));
const anyPattern = mm(0, 1).map(patternOf);

const earAbove = (height: number, pattern: Pattern): Ear => ({
  tip: vec(0, 0, height),
  axis: DOWN,
  pattern,
});

describe('H16 a point source', () => {
  const source = radiatingDisc(ORIGIN, UP, 100);

  it('keeps the inverse-distance law, from any side and at any angle to the mic', () => {
    fc.assert(
      fc.property(
        anyDirection,
        anyDirection,
        anyPattern,
        mm(20, 3000),
        (way, axis, pattern, near) => {
          const level = (d: number) =>
            toDecibels(discEnergy({ tip: along(ORIGIN, way, d), axis, pattern }, source, point));
          expect(level(near) - level(3.7 * near)).toBeCloseTo(20 * Math.log10(3.7), 8);
        },
      ),
    );
  });

  it.each(references('invdist.'))('$id, $source', (reference) => {
    const far = reference.id.endsWith('perpendicular') ? Math.hypot(1, 3) : 3;
    const level = (d: number) =>
      toDecibels(discEnergy(earAbove(100 * d, PATTERNS.omni), source, point));
    expect(agrees(level(1) - level(far), reference)).toBe(true);
  });

  it('is 0 dB on the axis at 1 m', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        expect(toDecibels(discEnergy(earAbove(1000, pattern), source, point))).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe('H16 a disc against its closed forms', () => {
  /**
   * The mean of (a + b cos)^2 / d^2 over a disc of radius R, h above its middle and looking at it, with D^2 = h^2 + R^2:
   * substitute d for the radius in the disc and integrate.
   */
  function onAxis({ a, b }: Pattern, radius: number, h: number): number {
    const far = Math.hypot(h, radius);
    const omni = a * a * Math.log((far * far) / (h * h));
    const mixed = 4 * a * b * (1 - h / far);
    return (1e6 * (omni + mixed + b * b * (1 - (h * h) / (far * far)))) / (radius * radius);
  }

  /** The same for an omni anywhere, `aside` from the axis: the uniform disc of shielding handbooks (from memory). */
  function anywhere(radius: number, h: number, aside: number): number {
    const s = radius * radius + h * h - aside * aside;
    const root = Math.sqrt(s * s + 4 * aside * aside * h * h);
    return (1e6 * Math.log((s + root) / (2 * h * h))) / (radius * radius);
  }

  it.each([75, 127, 178, 203, 254, 279, 330])(
    'on the axis, radius %i mm, within 0.2 dB',
    (radius) => {
      const disc = radiatingDisc(ORIGIN, UP, radius);
      for (const pattern of Object.values(PATTERNS)) {
        for (const h of [NEAREST, 20, 45, 80, 150, 400, 1000]) {
          const level = toDecibels(discEnergy(earAbove(h, pattern), disc));
          // The ideal figure-8 hears nothing of the rim of a disc it all but touches; what is claimed of it does.
          const tolerance = pattern.a === 0 && h < 0.15 * radius ? 0.6 : 0.2;
          expect(Math.abs(level - toDecibels(onAxis(pattern, radius, h)))).toBeLessThan(tolerance);
        }
      }
    },
  );

  it('an omni beside the axis, within 0.2 dB', () => {
    fc.assert(
      fc.property(mm(50, 330), mm(NEAREST, 1500), mm(0, 600), (radius, h, aside) => {
        const ear = { tip: vec(aside, 0, h), axis: DOWN, pattern: PATTERNS.omni };
        const level = toDecibels(discEnergy(ear, radiatingDisc(ORIGIN, UP, radius)));
        expect(Math.abs(level - toDecibels(anywhere(radius, h, aside)))).toBeLessThan(0.2);
      }),
      { numRuns: 300 },
    );
  });

  it('from far away it is a point source', () => {
    const disc = radiatingDisc(ORIGIN, UP, 178);
    const ear = earAbove(4000, PATTERNS.cardioid);
    expect(toDecibels(discEnergy(ear, disc) / discEnergy(ear, disc, point))).toBeCloseTo(0, 1);
  });
});

describe('H14 ten times the points', () => {
  it('change no level by more than 0.2 dB, wherever the mic is and looks', () => {
    const anyTip = fc.record({ x: mm(-500, 500), y: mm(-500, 500), z: mm(-600, 600) });
    const anyEar = fc.record({
      axis: anyDirection,
      pattern: fc.constantFrom(...Object.values(PATTERNS)),
    });
    fc.assert(
      fc.property(mm(40, 330), anyDirection, anyTip, anyEar, (radius, normal, tip, looking) => {
        const disc = radiatingDisc(ORIGIN, normal, radius);
        const ear: Ear = { tip, ...looking };
        const used = ruleFor(radius, Math.max(NEAREST, distanceToDisc(tip, disc))).length / 2;
        const fine = discRule(Math.ceil(Math.sqrt((10 * used) / 3)));
        const change = toDecibels(discEnergy(ear, disc, fine) / discEnergy(ear, disc));
        expect(Math.abs(change)).toBeLessThan(0.2);
      }),
      { numRuns: 300 },
    );
  });
});

describe('moving away', () => {
  it('straight up from a head never raises the level of an omni, whatever it is above', () => {
    fc.assert(
      fc.property(mm(40, 330), mm(NEAREST, 800), mm(0, 400), mm(1, 300), (radius, h, aside, by) => {
        const disc = radiatingDisc(ORIGIN, UP, radius);
        const rule = ruleFor(radius, h);
        const at = (z: number) =>
          discEnergy({ tip: vec(aside, 0, z), axis: DOWN, pattern: PATTERNS.omni }, disc, rule);
        expect(at(h + by)).toBeLessThan(at(h));
      }),
    );
  });

  it('straight up over the middle never raises the level of a mic that looks at it', () => {
    fc.assert(
      fc.property(
        mm(40, 330),
        mm(NEAREST, 800),
        anyPattern,
        mm(2, 300),
        (radius, h, pattern, by) => {
          const disc = radiatingDisc(ORIGIN, UP, radius);
          const rule = ruleFor(radius, h);
          const [near, far] = [h, h + by].map((z) => discEnergy(earAbove(z, pattern), disc, rule));
          // The last of a figure-8's claimed null (H5) is no law of the pattern.
          expect((far ?? 0) / (near ?? 1)).toBeLessThan(pattern.a < 0.15 ? 1.02 : 1);
        },
      ),
    );
  });
});

describe('distanceToDisc', () => {
  it('is that to the nearest of many points of the disc', () => {
    const dense = discRule(36);
    fc.assert(
      fc.property(
        mm(50, 300),
        anyDirection,
        fc.record({ x: mm(-500, 500), y: mm(-500, 500), z: mm(-500, 500) }),
        (radius, normal, tip) => {
          const disc = radiatingDisc(ORIGIN, normal, radius);
          const nearest = Math.min(...onDisc(disc, dense).map((p) => distance(p, tip)));
          const found = distanceToDisc(tip, disc);
          expect(found).toBeLessThanOrEqual(nearest + 1e-9);
          expect(nearest - found).toBeLessThan(radius / 20);
        },
      ),
      { numRuns: 40 },
    );
  });

  function onDisc(disc: ReturnType<typeof radiatingDisc>, rule: Float64Array): Vec3[] {
    return Array.from({ length: rule.length / 2 }, (_, i) =>
      along(
        along(disc.centre, disc.right, disc.radius * (rule[2 * i] ?? 0)),
        disc.ahead,
        disc.radius * (rule[2 * i + 1] ?? 0),
      ),
    );
  }
});

describe('H15 nearer than 10 mm', () => {
  /** As good as a point. */
  const speck = radiatingDisc(ORIGIN, UP, 0.01);
  const energy = (height: number) => discEnergy(earAbove(height, PATTERNS.omni), speck, point);

  it('counts as 10 mm: 40 dB over the level at 1 m, however near', () => {
    fc.assert(
      fc.property(mm(0, 9.9), (height) => {
        expect(toDecibels(energy(height))).toBeCloseTo(20 * Math.log10(1000 / NEAREST), 6);
      }),
    );
    expect(NEAREST).toBe(10);
  });

  it('from there on every mm counts', () => {
    fc.assert(
      fc.property(mm(10.1, 500), mm(0.1, 50), (height, more) => {
        expect(energy(height + more)).toBeLessThan(energy(height));
      }),
    );
  });
});
