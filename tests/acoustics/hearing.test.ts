import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toDecibels } from '../../src/acoustics/decibels.ts';
import { discRule, ruleFor } from '../../src/acoustics/discRule.ts';
import { angleOff, hear, levelAt } from '../../src/acoustics/hearing.ts';
import { PATTERNS } from '../../src/acoustics/pattern.ts';
import { discEnergy, distanceToDisc, type Ear, NEAREST } from '../../src/acoustics/radiation.ts';
import type { Source } from '../../src/acoustics/source.ts';
import { along, unit, vec } from '../../src/geometry/vector.ts';
import { kits } from '../rig/kits.ts';
import { heardIn, sceneOf, smallSource, sourceIn } from './scenes.ts';

const everything = kits.map(heardIn);
const allSources = everything.flatMap(({ sources }) => sources);

/** H19 with ten times the points. */
function fineLevel(ear: Ear, { level, surfaces }: Source): number {
  const energy = surfaces.reduce((sum, surface) => {
    const away = Math.max(NEAREST, distanceToDisc(ear.tip, surface));
    const used = ruleFor(surface.radius, away).length / 2;
    const fine = discRule(Math.ceil(Math.sqrt((10 * used) / 3)));
    return sum + surface.share * discEnergy(ear, surface, fine);
  }, 0);
  return level + toDecibels(energy);
}

describe('H19 the level of a piece at a mic', () => {
  it('is stable to 0.2 dB against ten times the points, for every mic and piece of every kit', () => {
    const changes = everything.flatMap(({ sources, listeners }) =>
      listeners.flatMap(({ ear }) =>
        sources.map((source) => Math.abs(fineLevel(ear, source) - levelAt(ear, source))),
      ),
    );
    expect(changes.length).toBeGreaterThan(500);
    expect(Math.max(...changes)).toBeLessThan(0.2);
  });

  it('falls when a mic moves straight away from any piece', () => {
    const direction = fc
      .tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })))
      .map(([x = 0, y = 0, z = 0]) => unit(vec(x, y, z), vec(0, 0, 1)));
    fc.assert(
      fc.property(
        fc.constantFrom(...allSources),
        direction,
        fc.double({ min: 1.2, max: 5, noNaN: true }),
        (source, way, times) => {
          const around = Math.hypot(source.struck.radius, source.depth);
          const at = (away: number): Ear => ({
            tip: along(source.struck.centre, way, away),
            axis: vec(0, 0, -1),
            pattern: PATTERNS.omni,
          });
          const near = times * around;
          expect(levelAt(at(1.05 * near), source)).toBeLessThan(levelAt(at(near), source));
        },
      ),
    );
  });

  it('is its level at 1 m, 1 m away on the axis, for what is small', () => {
    const { sources } = heardIn(sceneOf([smallSource('block', [0, 0, 800])], []));
    const block = sourceIn(sources, 'block');
    const ear = { tip: vec(0, 0, 1800), axis: vec(0, 0, -1), pattern: PATTERNS.cardioid };
    expect(levelAt(ear, block)).toBeCloseTo(block.level, 2);
  });

  it('is the same with the way it comes', () => {
    for (const { sources, listeners } of everything.slice(0, 2)) {
      for (const { ear } of listeners) {
        for (const source of sources) expect(hear(ear, source).level).toBe(levelAt(ear, source));
      }
    }
  });
});

describe('angleOff', () => {
  it('is between the axis and the way to a point, 0 at the mic itself', () => {
    const ear = { tip: vec(0, 0, 1000), axis: vec(0, 0, -1) };
    const angles = [vec(0, 0, 0), vec(500, 0, 500), vec(0, -300, 1000), vec(0, 0, 2000), ear.tip];
    expect(angles.map((p) => Math.round(angleOff(ear, p) * 1e6) / 1e6)).toEqual([
      0, 45, 90, 180, 0,
    ]);
  });
});
