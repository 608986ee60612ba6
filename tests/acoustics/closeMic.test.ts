import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { energySum } from '../../src/acoustics/decibels.ts';
import { levelAt } from '../../src/acoustics/hearing.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece, kits } from '../rig/kits.ts';
import { heardIn, micAt, only, sceneOf, smallSource, sourceIn, standAt } from './scenes.ts';

const acousticsOf = (layout: Parameters<typeof buildRig>[0] & typeof fivePiece) =>
  createAcoustics()(layout, buildRig(layout));

describe('H24 close mics', () => {
  it('isolation is own level over the energy of all it is not there to hear', () => {
    for (const layout of kits) {
      const { sources, listeners } = heardIn(layout);
      for (const close of acousticsOf(layout).close) {
        const mic = only(listeners.find(({ id }) => id === close.mic));
        const spill = sources
          .filter(({ piece }) => !mic.placed.mic.hears.includes(piece.id))
          .map((source) => levelAt(mic.ear, source, mic.shell));
        expect(close.level).toBeCloseTo(levelAt(mic.ear, sourceIn(sources, close.source)), 9);
        expect(close.others).toBeCloseTo(energySum(spill), 9);
        expect(close.isolation).toBeCloseTo(close.level - close.others, 9);
      }
    }
  });

  it('names the three worst, the worst first, with their angles, out of the polar data of all', () => {
    for (const close of acousticsOf(fivePiece).close) {
      const others = close.polar
        .filter(({ piece }) => piece !== close.source)
        .toSorted((p, q) => q.level - p.level);
      expect(close.worst).toEqual(others.slice(0, 3));
      expect(close.polar).toHaveLength(heardIn(fivePiece).sources.length);
      for (const { angle } of close.polar) {
        expect(angle).toBeGreaterThanOrEqual(0);
        expect(angle).toBeLessThanOrEqual(180);
      }
    }
  });

  it('a mic for two toms does not count the second against itself', () => {
    const pieces = [smallSource('one', [-200, 600, 800]), smallSource('two', [200, 600, 800])];
    const hearing = (hears: readonly string[]) =>
      only(
        acousticsOf(sceneOf(pieces, [micAt('mic', hears, standAt([0, 600, 900], [270, -90]))]))
          .close[0],
      );
    expect(hearing(['one']).worst.map(({ piece }) => piece)).toEqual(['two']);
    expect(hearing(['one']).isolation).toBeCloseTo(0, 6);
    expect(hearing(['one', 'two']).worst).toEqual([]);
    expect(hearing(['one', 'two']).isolation).toBe(Number.POSITIVE_INFINITY);
    expect(hearing(['one', 'two']).turn).toBeNull();
  });
});

describe('H25 proximity', () => {
  it('is that of a small source where the mic aims: a cardioid 100 mm over it gains 9.27 dB at 100 Hz', () => {
    const layout = {
      ...sceneOf(
        [smallSource('block', [0, 600, 800])],
        [micAt('mic', ['block'], standAt([0, 600, 900], [270, -90]))],
      ),
    };
    const close = only(acousticsOf(layout).close[0]);
    expect(close.distance).toBeCloseTo(100, 9);
    expect(close.proximity).toBeCloseTo(9.27, 2);
    expect(close.aim?.zone).toBe('centre');
  });

  it('a mic works from the nearest place of the head it faces, whichever way it looks, and never from nearer than 10 mm', () => {
    const at = fc.record({
      x: fc.integer({ min: -300, max: 300 }),
      y: fc.integer({ min: -300, max: 300 }),
      over: fc.integer({ min: 1, max: 300 }),
      pitch: fc.constantFrom(0, 20, 60, 90),
    });
    let close = 0;
    fc.assert(
      fc.property(at, ({ x, y, over, pitch }) => {
        const layout = sceneOf(
          [smallSource('block', [0, 600, 800])],
          [micAt('mic', ['block'], standAt([x, 600 + y, 800 + over], [90, pitch]))],
        );
        const { distance } = only(acousticsOf(layout).close[0]);
        // The block's head is 30 mm across.
        const away = Math.hypot(Math.max(0, Math.hypot(x, y) - 15), over);
        if (away < 10) close += 1;
        // Looking level or up it meets no head.
        expect(distance).toBeCloseTo(Math.max(10, away), 6);
      }),
    );
    expect(close).toBeGreaterThan(0);
  });

  it('a boundary plate, an omni, has none', () => {
    const plates = acousticsOf(fivePiece).close.filter(({ mic }) => mic.includes('plate'));
    expect(plates.map(({ proximity }) => proximity)).toEqual([0]);
  });
});
