import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastCrossing } from '../../src/cabling/leastCrossing.ts';
import { routeRuns } from '../../src/cabling/routeRuns.ts';
import { crossing } from '../../src/geometry/planSegments.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { Rig } from '../../src/rig/placed.ts';
import { bareLayout, hangingMic, type Spot, startingLayouts, withMics } from './scenes.ts';

/** How many pairs of lines of different cables cross. */
function crossings(layout: Layout, rig: Rig): number {
  const routes = routeRuns(layout, rig).map(({ route }) => route);
  let count = 0;
  for (const [i, own] of routes.entries()) {
    for (const other of routes.slice(i + 1)) {
      for (const [k, to] of own.slice(1).entries()) {
        for (const [m, end] of other.slice(1).entries()) {
          if (crossing<'deck'>([own[k] ?? to, to], [other[m] ?? end, end])) count += 1;
        }
      }
    }
  }
  return count;
}

const plugged = (rig: Rig, inputOf: (mic: string) => number): Rig => ({
  ...rig,
  mics: rig.mics.map((placed) => ({
    ...placed,
    mic: { ...placed.mic, input: inputOf(placed.mic.id) },
  })),
});

function orders(of: readonly number[]): number[][] {
  if (of.length === 0) return [[]];
  return of.flatMap((first) =>
    orders(of.filter((other) => other !== first)).map((rest) => [first, ...rest]),
  );
}

const place = fc.record({
  x: fc.integer({ min: -1700, max: 2900 }),
  y: fc.integer({ min: -1900, max: 1900 }),
});
const micsAt = (places: readonly Spot[]) =>
  places.map((at, i) => hangingMic(`mic-${i + 1}`, { x: at.x, y: at.y }, null));

describe('inputs with which cables cross least', () => {
  it('N1, N3: cross no more than in the best of all orders', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(place, { maxLength: 5, selector: ({ x, y }) => `${x} ${y}` }),
        (places) => {
          const [layout, rig] = withMics(bareLayout, micsAt(places));
          const own = leastCrossing(layout, rig);
          const least = Math.min(
            ...orders(places.map((_, i) => i + 1)).map((order) =>
              crossings(
                layout,
                plugged(
                  rig,
                  (mic) => order[rig.mics.findIndex((placed) => placed.mic.id === mic)] ?? 0,
                ),
              ),
            ),
          );
          expect(
            crossings(
              layout,
              plugged(rig, (mic) => own.get(mic) ?? 0),
            ),
          ).toBeLessThanOrEqual(least);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('N1: never cross more than in festival order', () => {
    for (const layout of startingLayouts) {
      const rig = buildRig(layout);
      const own = leastCrossing(layout, rig);
      const now = crossings(layout, rig);
      expect(
        crossings(
          layout,
          plugged(rig, (mic) => own.get(mic) ?? 0),
        ),
      ).toBeLessThanOrEqual(now);
    }
  });

  it('N1, by hand: from the left end of the row to its right, whichever way the box faces', () => {
    const places = [
      { x: 500, y: 1500 },
      { x: 500, y: -1500 },
      { x: 500, y: 0 },
    ];
    const [layout, rig] = withMics(bareLayout, micsAt(places));
    expect([...leastCrossing(layout, rig)]).toEqual([
      ['mic-2', 1],
      ['mic-3', 2],
      ['mic-1', 3],
    ]);
  });

  it('N2: every input once, two rows filled from their left ends, the rest numbered on', () => {
    const numbered = (mics: number): readonly number[] => {
      const places = Array.from({ length: mics }, (_, i) => ({ x: 800, y: 280 * i - 1900 }));
      const box = { ...bareLayout.box, inputs: 12 };
      const [layout, rig] = withMics({ ...bareLayout, box }, micsAt(places));
      const inputs = leastCrossing(layout, rig);
      return places.map((_, i) => inputs.get(`mic-${i + 1}`) ?? 0);
    };
    expect(numbered(12)).toEqual([1, 7, 2, 8, 3, 9, 4, 10, 5, 11, 6, 12]);
    expect(numbered(14).toSorted((p, q) => p - q)).toEqual(
      Array.from({ length: 14 }, (_, i) => i + 1),
    );
  });
});
