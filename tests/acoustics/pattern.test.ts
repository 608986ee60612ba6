import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toDecibels } from '../../src/acoustics/decibels.ts';
import {
  claimedLevel,
  idealLevel,
  NULL_DEPTH,
  nullAngle,
  PATTERNS,
  type Pattern,
  type PatternName,
  patternName,
  patternOf,
  randomEnergyEfficiency,
  sensitivity,
} from '../../src/acoustics/pattern.ts';
import { agrees, referenceList, references } from './reference.ts';

/** Names of the reference values and those of this project. */
const named: Readonly<Record<string, PatternName>> = {
  omni: 'omni',
  subcardioid_75: 'subcardioid75',
  subcardioid_70: 'subcardioid70',
  cardioid: 'cardioid',
  supercardioid_375: 'supercardioid375',
  supercardioid_37: 'supercardioid37',
  supercardioid_exact: 'supercardioidExact',
  hypercardioid: 'hypercardioid',
  figure8: 'figure8',
  // The published table's supercardioid has its null at 127 degrees: A = 0.375.
  supercardioid: 'supercardioid375',
};

/** Figures that tables are made of, from what the app knows of a pattern: its sensitivity and its random energy efficiency. */
const directivityIndex = (pattern: Pattern): number => -toDecibels(randomEnergyEfficiency(pattern));
const distanceFactor = (pattern: Pattern): number => 1 / Math.sqrt(randomEnergyEfficiency(pattern));

/** Energy from the front half of all directions over that from the back half, dB: even steps of the cosine are even shares of the directions. */
function frontToBack(pattern: Pattern): number {
  const steps = 2000;
  let [front, back] = [0, 0];
  for (let i = 0; i < steps; i += 1) {
    const cos = (i + 0.5) / steps;
    front += sensitivity(pattern, cos) ** 2;
    back += sensitivity(pattern, -cos) ** 2;
  }
  return toDecibels(front / back);
}

/** The full arc about the axis within which the sensitivity is at least `ratio` of that on the axis, degrees, by halving. */
function arcWithin(pattern: Pattern, ratio: number): number {
  const isWithin = (angle: number) =>
    sensitivity(pattern, Math.cos((angle * Math.PI) / 180)) >= ratio;
  if (isWithin(180)) return 360;
  let [within, beyond] = [0, 180];
  for (let k = 0; k < 50; k += 1) {
    const middle = (within + beyond) / 2;
    if (isWithin(middle)) within = middle;
    else beyond = middle;
  }
  return 2 * within;
}

const figures: Readonly<Record<string, (pattern: Pattern) => number>> = {
  REE: randomEnergyEfficiency,
  DI: directivityIndex,
  distance_factor: distanceFactor,
  dB90: (pattern) => idealLevel(pattern, 90),
  dB180: (pattern) => idealLevel(pattern, 180),
  null: (pattern) => nullAngle(pattern) ?? Number.NaN,
  half_power_arc: (pattern) => arcWithin(pattern, Math.SQRT1_2),
  half_amp_arc: (pattern) => arcWithin(pattern, 0.5),
  arc3: (pattern) => arcWithin(pattern, Math.SQRT1_2),
  arc6: (pattern) => arcWithin(pattern, 0.5),
};

function computed(id: string): number {
  const [figure = '', name = ''] = id.split('.').toReversed();
  const pattern = named[name];
  const of = figures[figure];
  if (!pattern || !of) throw new RangeError(`Nothing computes ${id}`);
  return of(PATTERNS[pattern]);
}

const anyPattern = fc.double({ min: 0, max: 1, noNaN: true }).map(patternOf);

describe('H4 and H6 first-order patterns against published and computed values', () => {
  it.each(references('polar.'))('$id, $source', (reference) => {
    expect(agrees(computed(reference.id), reference)).toBe(true);
  });
});

describe('Eargle, The Microphone Book, 2nd ed. 2004, table 6-1 (Olson 1972)', () => {
  it.each(['figure8', 'cardioid', 'hypercardioid'] as const)('%s', (name) => {
    const [efficiency = 0, factor = 0, index = 0] = referenceList(`polar.eargle6_1.${name}`);
    expect(Math.abs(randomEnergyEfficiency(PATTERNS[name]) - efficiency)).toBeLessThan(0.005);
    // The table's second column is the directivity factor, the square of the distance factor.
    expect(distanceFactor(PATTERNS[name]) ** 2).toBeCloseTo(factor, 1);
    expect(Math.abs(directivityIndex(PATTERNS[name]) - index)).toBeLessThan(0.05);
  });
});

describe('laws of patterns', () => {
  it('H6: the energy of a pattern, integrated over all directions, is its random energy efficiency', () => {
    const steps = 2000;
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        let sum = 0;
        let weight = 0;
        for (let i = 0; i < steps; i += 1) {
          const angle = (Math.PI * (i + 0.5)) / steps;
          sum += sensitivity(pattern, Math.cos(angle)) ** 2 * Math.sin(angle);
          weight += Math.sin(angle);
        }
        expect(sum / weight).toBeCloseTo(randomEnergyEfficiency(pattern), 5);
      }),
    );
  });

  it('no pattern has a greater directivity index than the hypercardioid', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        expect(directivityIndex(pattern)).toBeLessThanOrEqual(
          directivityIndex(PATTERNS.hypercardioid) + 1e-12,
        );
      }),
    );
  });

  it('no pattern has a greater front-to-back ratio than the exact supercardioid', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        expect(frontToBack(pattern)).toBeLessThanOrEqual(
          frontToBack(PATTERNS.supercardioidExact) + 1e-6,
        );
      }),
    );
    expect(frontToBack(PATTERNS.supercardioidExact)).toBeCloseTo(11.44, 2);
  });

  it('cardioid and figure-8 have the same directivity index', () => {
    expect(directivityIndex(PATTERNS.cardioid)).toBe(directivityIndex(PATTERNS.figure8));
  });

  it('a null hears nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }).map(patternOf), (pattern) => {
        expect(idealLevel(pattern, nullAngle(pattern) ?? 0)).toBeLessThan(-140);
      }),
    );
  });

  it('there is no null above half omnidirectional', () => {
    expect([PATTERNS.omni, PATTERNS.subcardioid75, patternOf(0.51)].map(nullAngle)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe('H5 what is claimed of a null', () => {
  it('is within 20 to 25 dB, however deep the ideal null', () => {
    expect(NULL_DEPTH).toBeGreaterThanOrEqual(20);
    expect(NULL_DEPTH).toBeLessThanOrEqual(25);
    expect(claimedLevel(PATTERNS.cardioid, 180)).toBe(-NULL_DEPTH);
  });

  it('changes nothing above it', () => {
    expect(claimedLevel(PATTERNS.cardioid, 90)).toBe(idealLevel(PATTERNS.cardioid, 90));
  });
});

describe('patternName', () => {
  it('names every convention and nothing between them', () => {
    for (const [name, pattern] of Object.entries(PATTERNS)) expect(patternName(pattern)).toBe(name);
    expect(patternName(patternOf(0.6))).toBeUndefined();
  });
});
