import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INPUT_HEIGHT } from '../../src/cabling/box.ts';
import { runAlong } from '../../src/cabling/runParts.ts';
import { bareLayout, hangingMic } from './scenes.ts';

const mic = hangingMic('mic', { x: 0, y: 0 }, 3);
const way = {
  route: [
    { x: 0, y: 0 },
    { x: 300, y: 400 },
    { x: 300, y: 1400 },
  ],
  edges: 0,
  through: ['kick'],
  restsOn: null,
  ends: [],
  legs: [],
};

describe('a run', () => {
  it('R1: lists its parts in the order in which it is laid, worked by hand', () => {
    const run = runAlong(mic, way, bareLayout);
    expect(run.parts).toEqual([
      { what: 'loopAtMic', length: 500 },
      { what: 'air', length: 1000 },
      { what: 'deck', length: 1500 },
      { what: 'box', length: INPUT_HEIGHT },
      { what: 'loopAtBox', length: 400 },
      { what: 'dressing', length: 256 },
    ]);
    expect(run.total).toBe(3716);
    expect({ ...run, parts: [] }).toEqual({
      mic: 'mic',
      input: 3,
      route: way.route,
      parts: [],
      total: 3716,
      through: ['kick'],
    });
  });

  it("R1: adds the deck's height each time it goes over the edge", () => {
    const twice = runAlong(mic, { ...way, edges: 2 }, bareLayout);
    expect(twice.parts[3]).toEqual({ what: 'edge', length: 800 });
    expect(twice.total).toBeCloseTo(3716 + 800 * 1.1, 9);
  });

  it('R2: its total is exactly the sum of its parts', () => {
    const lengths = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(lengths),
        lengths,
        fc.double({ min: 0, max: 50, noNaN: true }),
        (descent, x, dressing) => {
          const placed = {
            ...mic,
            descent: descent.map((length) => ({ along: 'boom' as const, length })),
          };
          const layout = { ...bareLayout, cabling: { ...bareLayout.cabling, dressing } };
          const run = runAlong(
            placed,
            {
              ...way,
              route: [
                { x: 0, y: 0 },
                { x, y: x },
              ],
            },
            layout,
          );
          let sum = 0;
          for (const { length } of run.parts) sum += length;
          expect(run.total).toBe(sum);
        },
      ),
    );
  });
});
