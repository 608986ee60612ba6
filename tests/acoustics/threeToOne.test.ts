import { describe, expect, it } from 'vitest';
import { ripple } from '../../src/acoustics/comb.ts';
import { pairRipples } from '../../src/acoustics/threeToOne.ts';
import { kits } from '../rig/kits.ts';
import { heardIn, micAt, omniClass, only, sceneOf, smallSource, standAt } from './scenes.ts';

const D = 300;

/** Omnis `D` mm over two small sources that stand `apart` mm from each other. */
const pairOf = (apart: number, patternClass = omniClass.id) =>
  only(
    pairRipples(
      heardIn(
        sceneOf(
          [smallSource('one', [0, 0, 800]), smallSource('two', [apart, 0, 800])],
          [
            micAt('mic-one', ['one'], standAt([0, 0, 800 + D], [0, -90]), patternClass),
            micAt('mic-two', ['two'], standAt([apart, 0, 800 + D], [0, -90]), patternClass),
          ],
        ),
      ).listeners,
    )[0],
  );

describe('H31 the 3:1 rule, by the figures', () => {
  it('at 3:1 square to the sources the far path is the root of 10: 10.0 dB and 5.69 dB of ripple (computed)', () => {
    const pair = pairOf(3 * D);
    expect(pair.spacing).toBeCloseTo(3 * D, 9);
    expect(pair.near).toBeCloseTo(D, 0);
    // To the near edge of the source, 15 mm from its middle.
    expect(pair.far).toBeCloseTo(Math.hypot(3 * D - 15, D), 6);
    expect(pair.ratio).toBeCloseTo(3, 1);
    expect(pair.levelDifference).toBeCloseTo(10, 1);
    expect(pair.ripple.peakToDip).toBeCloseTo(5.688, 1);
  });

  it('a directional mic that looks down hears less of the neighbour: less ripple at the same distances', () => {
    expect(pairOf(3 * D, 'pencil-condenser').ripple.peakToDip).toBeLessThan(
      pairOf(3 * D).ripple.peakToDip,
    );
  });

  it('ripples less the farther apart', () => {
    const ripples = [D, 2 * D, 3 * D, 5 * D].map((apart) => pairOf(apart).ripple.peakToDip);
    expect(ripples).toEqual(ripples.toSorted((p, q) => q - p));
  });

  it('tells every pair of open mics that hear something once, the most harmful first', () => {
    for (const layout of kits) {
      const { listeners } = heardIn(layout);
      const found = pairRipples(listeners);
      const n = listeners.length;
      expect(found).toHaveLength((n * (n - 1)) / 2);
      expect(new Set(found.map(({ mic, other }) => [mic, other].sort().join())).size).toBe(
        found.length,
      );
      const harm = found.map((pair) => pair.ripple.peakToDip);
      expect(harm).toEqual(harm.toSorted((p, q) => q - p));
    }
  });

  it('takes of both own sources the one that ripples more', () => {
    const { listeners } = heardIn(only(kits.find(({ mics }) => mics.length === 9)));
    for (const { mic, other, source, levelDifference, ripple: told } of pairRipples(listeners)) {
      const [own, far] = [mic, other].map((id) => only(listeners.find((one) => one.id === id)));
      if (!own || !far) throw new RangeError('both mics are there');
      const level = (one: typeof own, piece: string) =>
        only(one.heard.find((heard) => heard.piece === piece)).level;
      const ownId = only(far.own).piece.id;
      const reverse = Math.abs(level(far, ownId) - level(own, ownId));
      expect(source).toBe(own.own?.piece.id);
      expect(levelDifference).toBeCloseTo(level(own, source) - level(far, source), 9);
      expect(Math.abs(levelDifference)).toBeLessThanOrEqual(reverse + 1e-9);
      expect(told).toEqual(ripple(levelDifference));
    }
  });

  it('says when the other mic is there to hear the source too', () => {
    const { listeners } = heardIn(only(kits.find(({ mics }) => mics.length === 9)));
    for (const { other, source, shared } of pairRipples(listeners)) {
      const mic = only(listeners.find(({ id }) => id === other)).placed.mic;
      expect(shared).toBe(mic.hears.includes(source));
    }
  });

  it('a mic that hears nothing on purpose still shares its neighbours, two such mics make no pair', () => {
    const free = ['one', 'two'].map((id, i) =>
      micAt(id, [], standAt([300 * i, 0, 1200], [0, -90])),
    );
    const block = smallSource('block', [0, 0, 800]);
    expect(pairRipples(heardIn(sceneOf([block], free)).listeners)).toEqual([]);
    const own = micAt('three', ['block'], standAt([600, 0, 1200], [0, -90]));
    const found = pairRipples(heardIn(sceneOf([block], [...free, own])).listeners);
    expect(found.map(({ mic }) => mic)).toEqual(['three', 'three']);
  });
});
