import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  accessLane,
  beforeStairs,
  laneBlocks,
  laneCrossing,
} from '../../src/cabling/accessLane.ts';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import { usualThrone } from '../../src/layout/catalogue/defaults/usualPieces.ts';
import type { Stairs } from '../../src/layout/deck.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { bareLayout, obstacle, rectangle } from './scenes.ts';

const withStairs = (stairs: readonly Stairs[], pieces: Layout['pieces'] = []): Layout => ({
  ...bareLayout,
  pieces,
  deck: { ...bareLayout.deck, stairs: [...stairs] },
});
const back: Stairs = { edge: 'back', offset: 0, width: 900 };

describe('the access lane', () => {
  it('A1: is none without stairs', () => {
    expect(accessLane(bareLayout)).toBeUndefined();
  });

  it('A1: is 600 mm wide from the back of the throne to the middle of the stairs', () => {
    const throne = { ...usualThrone('throne'), diameter: 330 };
    const lane = accessLane(withStairs([back], [throne]));
    if (!lane) throw new Error('a lane was expected');
    expect(lane.low).toEqual({ x: -300, y: -2000 });
    expect(lane.high).toEqual({ x: 300, y: -165 });
  });

  it('A1: leads to the nearest stairs, wherever the kit stands and however it is turned', () => {
    const layout = withStairs([
      { edge: 'front', offset: 500, width: 900 },
      { edge: 'right', offset: -200, width: 900 },
      { edge: 'left', offset: -200, width: 900 },
    ]);
    const nearLeft = { ...layout, deck: { ...layout.deck, kit: { x: -1500, y: 0, turn: 40 } } };
    const lane = accessLane(nearLeft);
    if (!lane) throw new Error('a lane was expected');
    expect(isInside(lane, { x: -2900, y: -180 })).toBe(true);
    expect(isInside(lane, { x: -1600, y: 0 })).toBe(true);
    expect(isInside(lane, { x: -1400, y: 0 })).toBe(false);
  });

  it('A2: is crossed by what lies inside, by that length, in the middle of it', () => {
    const lane = accessLane(withStairs([back]));
    if (!lane) throw new Error('a lane was expected');
    const crossing = laneCrossing(lane, [
      { x: -1000, y: -1000 },
      { x: 1000, y: -1000 },
    ]);
    expect(crossing?.place.x).toBeCloseTo(0, 9);
    expect(crossing?.place.y).toBeCloseTo(-1000, 9);
    expect(crossing?.length).toBeCloseTo(600, 9);
    const twice = laneCrossing(lane, [
      { x: -1000, y: -1500 },
      { x: 1000, y: -1500 },
      { x: 1000, y: -500 },
      { x: -1000, y: -500 },
    ]);
    expect(twice?.place.y).toBeCloseTo(-1500, 9);
    expect(twice?.length).toBeCloseTo(1200, 9);
    const ends = laneCrossing(lane, [
      { x: 500, y: -1000 },
      { x: 200, y: -1000 },
    ]);
    expect(ends?.length).toBeCloseTo(100, 9);
  });

  it('A2: is not crossed by what stays beside it or runs along its side', () => {
    const lane = accessLane(withStairs([back]));
    if (!lane) throw new Error('a lane was expected');
    const side = fc.integer({ min: 300, max: 2500 });
    const along = fc.integer({ min: -2000, max: 2000 });
    fc.assert(
      fc.property(side, side, along, along, (x1, x2, y1, y2) => {
        const route = [
          { x: x1, y: y1 },
          { x: x2, y: y2 },
        ];
        expect(laneCrossing(lane, route)).toBeUndefined();
      }),
    );
  });

  it('A3: is blocked by each thing inside once, at its part that must go farthest aside, but for throne and feet', () => {
    const layout = withStairs([back]);
    const square = (x: number, y: number) => rectangle({ x, y }, { x: x + 100, y: y + 100 });
    const thing = (owner: string, x: number) => obstacle(owner, 'foot', square(x, -1000));
    const blocks = laneBlocks(layout, [
      thing('left', -390),
      // As wide as the lane leaves it on one side: it touches, no more.
      thing('beside', 300),
      thing('two-feet', 280),
      thing('two-feet', 150),
      thing('two-feet', 290),
      obstacle('throne', 'throne', square(0, -300)),
      obstacle('pedal', 'footSpace', square(0, -600)),
      { ...obstacle('box', 'box', square(-50, -1500)), owner: null },
    ]);
    expect(blocks.map(({ owner }) => owner)).toEqual(['left', 'two-feet', null]);
    const by = blocks.map(({ overlap }) => overlap);
    for (const [i, overlap] of [10, 150, 350].entries()) expect(by[i]).toBeCloseTo(overlap, 9);
    expect(blocks[1]?.place).toEqual({ x: 200, y: -950 });
  });

  it('A3: nothing blocks it where there is none', () => {
    expect(
      laneBlocks(bareLayout, [obstacle('in', 'foot', rectangle({ x: -9, y: -9 }, { x: 9, y: 9 }))]),
    ).toEqual([]);
  });

  it('A4: before stairs is as wide as they are, 600 mm from the edge to both sides', () => {
    const { deck } = bareLayout;
    const at = (stairs: Stairs) => {
      const { low, high } = beforeStairs(stairs, deck);
      return [low.x, high.x, low.y, high.y].map(Math.round);
    };
    expect(at({ edge: 'back', offset: 200, width: 900 })).toEqual([-250, 650, -2600, -1400]);
    expect(at({ edge: 'right', offset: 500, width: 1000 })).toEqual([2400, 3600, 0, 1000]);
    expect(at({ edge: 'left', offset: 0, width: 800 })).toEqual([-3600, -2400, -400, 400]);
  });
});
