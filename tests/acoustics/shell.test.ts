import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { toDecibels } from '../../src/acoustics/decibels.ts';
import { earOf, hear, levelAt } from '../../src/acoustics/hearing.ts';
import { PATTERNS, patternOf, randomEnergyEfficiency } from '../../src/acoustics/pattern.ts';
import type { Ear } from '../../src/acoustics/radiation.ts';
import { isInside, shellAround } from '../../src/acoustics/shell.ts';
import { type Source, sourceOf } from '../../src/acoustics/source.ts';
import { along, scale, unit, type Vec3, vec } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece } from '../rig/kits.ts';
import { heardIn, only, sourceIn } from './scenes.ts';

const sourcesWith = (shellLoss: number, layout: Layout = fivePiece): readonly Source[] =>
  buildRig(layout).pieces.flatMap(
    (placed) => sourceOf(placed, { ...DEFAULT_CHOICES, shellLoss }) ?? [],
  );
const drums = sourcesWith(10).filter(({ depth }) => depth > 0);
const kick = sourceIn(drums, 'kick');
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyAxis = fc
  .record({ x: number(-1, 1), y: number(-1, 1), z: number(-1, 1) })
  .map((v) => unit(v, vec(0, 0, 1)));
const anyPattern = number(0, 1).map(patternOf);
const portOf = ({ surfaces }: Source) =>
  only(
    surfaces.find(({ name }) => name === 'port'),
    'port',
  );

/** A point by its share of the way between the heads and of the radius, at an angle round the shell. */
const pointIn = ({ struck, depth }: Source, down: number, out: number, turn: number): Vec3 =>
  along(
    along(
      along(struck.centre, struck.normal, -down * depth),
      struck.right,
      out * struck.radius * Math.cos(turn),
    ),
    struck.ahead,
    out * struck.radius * Math.sin(turn),
  );

/** A point of the kick farther than its port's radius from it. */
const deepInKick = fc
  .tuple(number(0.05, 0.5), number(0, 0.95), number(0, 6.28))
  .map(([down, out, turn]) => pointIn(kick, down, out, turn));

describe('inside a shell', () => {
  it('is between the heads and within the radius, for every drum', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...drums),
        number(-1, 2),
        number(0, 2),
        number(0, 6.28),
        (drum, down, out, turn) => {
          fc.pre(Math.abs(down) > 1e-6 && Math.abs(down - 1) > 1e-6 && Math.abs(out - 1) > 1e-6);
          const inside = down > 0 && down < 1 && out < 1;
          expect(isInside(pointIn(drum, down, out, turn), drum)).toBe(inside);
        },
      ),
    );
  });

  it('is said of the kick’s inner mics of every kit, and of no mic outside', () => {
    const { listeners } = heardIn(fivePiece);
    const inside = listeners.filter(({ shell }) => shell);
    expect(inside.map(({ shell }) => shell?.piece.kind)).toEqual(inside.map(() => 'kick'));
    expect(inside.length).toBeGreaterThan(0);
    expect(shellAround(vec(0, 3000, 500), drums)).toBeUndefined();
  });
});

describe('H41 what a shell keeps out', () => {
  it('dB for dB what the loss says, away from the port, at every angle and pattern', () => {
    fc.assert(
      fc.property(deepInKick, anyAxis, anyPattern, number(0, 30), (tip, axis, pattern, loss) => {
        const ear: Ear = { tip, axis, pattern };
        const [without, withLoss] = [sourcesWith(0), sourcesWith(loss)];
        for (const [i, source] of without.entries()) {
          if (source.piece.kind === 'kick') continue;
          const level = levelAt(ear, source, sourceIn(without, 'kick'));
          const kept = levelAt(ear, only(withLoss[i]), sourceIn(withLoss, 'kick'));
          expect(level - kept).toBeCloseTo(loss, 6);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('turning changes nothing there: sound comes from all sides, by the random energy efficiency', () => {
    fc.assert(
      fc.property(deepInKick, anyAxis, anyPattern, (tip, axis, pattern) => {
        const source = sourceIn(drums, 'snare');
        const level = levelAt({ tip, axis, pattern }, source, kick);
        const omni = levelAt({ tip, axis: scale(axis, -1), pattern: PATTERNS.omni }, source);
        const taken = toDecibels(randomEnergyEfficiency(pattern)) - 10;
        expect(level - omni).toBeCloseTo(taken, 6);
      }),
    );
  });

  it('nothing of the drum’s own sound, and nothing outside', () => {
    fc.assert(
      fc.property(deepInKick, anyAxis, anyPattern, (tip, axis, pattern) => {
        const ear = { tip, axis, pattern };
        expect(levelAt(ear, kick, kick)).toBe(levelAt(ear, kick));
      }),
    );
    const levels = (shellLoss: number) =>
      createAcoustics()(fivePiece, buildRig(fivePiece), { ...DEFAULT_CHOICES, shellLoss })
        .close.filter(({ shell }) => shell === null)
        .map(({ level, isolation }) => [level, isolation]);
    expect(levels(30)).toEqual(levels(0));
  });

  it('grows from nothing in the port’s plane, without a step', () => {
    const port = portOf(kick);
    fc.assert(
      fc.property(number(0, 0.95), number(0, 6.28), anyAxis, (out, turn, axis) => {
        const aside = along(port.centre, port.right, out * port.radius * Math.cos(turn));
        const inPlane = along(aside, port.ahead, out * port.radius * Math.sin(turn));
        const justInside = along(inPlane, port.normal, -1e-6);
        const source = sourceIn(drums, 'snare');
        const ear = (tip: Vec3): Ear => ({ tip, axis, pattern: PATTERNS.cardioid });
        expect(isInside(justInside, kick)).toBe(true);
        expect(levelAt(ear(justInside), source, kick)).toBeCloseTo(
          levelAt(ear(inPlane), source),
          4,
        );
      }),
    );
    const levels = [0, 0.25, 0.5, 0.75, 1].map((share) => {
      const tip = along(port.centre, port.normal, -share * port.radius - 1e-6);
      const ear = { tip, axis: vec(0, -1, 0), pattern: PATTERNS.omni };
      return levelAt(ear, sourceIn(drums, 'snare'), kick);
    });
    expect(levels).toEqual(levels.toSorted((p, q) => q - p));
  });

  it('`hear` and `levelAt` agree, inside and out', () => {
    for (const placed of buildRig(fivePiece).mics) {
      const shell = shellAround(placed.tip, drums);
      for (const source of sourcesWith(10)) {
        const ear = earOf(placed);
        expect(hear(ear, source, shell).level).toBeCloseTo(levelAt(ear, source, shell), 9);
      }
    }
  });
});

describe('a mic inside the kick', () => {
  const inside = createAcoustics()(fivePiece, buildRig(fivePiece)).close.filter(
    ({ shell }) => shell !== null,
  );

  it('is offered no turn into a null, since nothing there has a direction', () => {
    expect(inside.map(({ turn }) => turn)).toEqual(inside.map(() => null));
  });

  it('hears more of the kick than of all the rest, as everyone knows it to', () => {
    expect(Math.min(...inside.map(({ isolation }) => isolation))).toBeGreaterThan(3);
  });
});

describe('the usual shell loss', () => {
  /**
   * The mass law of a limp film, R = 10 lg(1 + (pi f m / (rho c))^2) (ita-toolbox, `ita_propagation_transmission.m`), on a 22 in kick: front head
   * 0.25 mm and batter 0.36 mm of polyester film (1390 kg/m3), a port of 130 mm that lets everything through, 0.25 m2 of
   * absorption inside; the shell itself keeps out far more. Outside a diffuse field, so that the energy inside over that outside is
   * what comes through over what is absorbed. Sizes, thicknesses and absorption from memory.
   */
  function keptOut(frequency: number): number {
    const [head, port] = [Math.PI * 0.279 ** 2, Math.PI * 0.065 ** 2];
    const film = (thickness: number) =>
      1 / (1 + ((Math.PI * frequency * 1390 * thickness) / (1.204 * 343.2)) ** 2);
    const through = port + (head - port) * film(0.25e-3) + head * film(0.36e-3);
    return -toDecibels(through / (0.25 + through));
  }

  it('is what the mass law keeps out around 2 kHz, more than at 1 kHz and less than at 4 kHz', () => {
    expect(Math.abs(keptOut(2000) - DEFAULT_CHOICES.shellLoss)).toBeLessThan(1);
    expect(keptOut(1000)).toBeLessThan(DEFAULT_CHOICES.shellLoss);
    expect(keptOut(4000)).toBeGreaterThan(DEFAULT_CHOICES.shellLoss);
    expect(keptOut(100)).toBeLessThan(4);
  });
});
