import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accessLane, laneCrossing } from '../../src/cabling/accessLane.ts';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import { usualThrone } from '../../src/layout/catalogue/defaults/usualPieces.ts';
import type { Stairs } from '../../src/layout/deck.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { bareLayout } from './scenes.ts';

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
});
