import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputPlace, obstacleOfBox } from '../../src/cabling/box.ts';
import { floorObstacles } from '../../src/cabling/floorObstacles.ts';
import { createLayWay, type LaidWay } from '../../src/cabling/layWay.ts';
import { isInside, passesThrough } from '../../src/geometry/convexPolygon.ts';
import { wayLength } from '../../src/geometry/plan.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { bareLayout, disc, type Spot, withMics } from './scenes.ts';

const withBox = (box: Partial<Layout['box']>): Layout => ({
  ...bareLayout,
  box: { ...bareLayout.box, ...box },
});
const lay = (layout: Layout, start: Spot, input: number | null = 1): LaidWay =>
  createLayWay(layout, floorObstacles(...withMics(layout, [])))(start, input);
const onDeck = ({ x, y }: Spot): boolean => Math.abs(x) <= 3000 && Math.abs(y) <= 2000;

describe('D1: a box on the deck', () => {
  it('is reached straight, then straight into the input', () => {
    const { spot, before } = inputPlace(bareLayout, 3);
    const from = { x: 1000, y: 700 };
    const way = lay(bareLayout, from, 3);
    const route = [from, before, spot];
    const legs = [{ floor: 'deck', first: 0, last: 1, from }];
    const ends = [from, before].map((place) => ({ place, within: 0 }));
    expect(way).toEqual({ route, edges: 0, through: [], restsOn: [], ends, legs });
  });

  it('names what stands right in front of the input', () => {
    const { spot, before } = inputPlace(bareLayout, 3);
    const foot = disc('stand', 'foot', { x: (spot.x + before.x) / 2, y: spot.y }, 10);
    const { through } = createLayWay(bareLayout, [foot])({ x: 1000, y: 700 }, 3);
    expect(through).toEqual(['stand']);
  });

  it('is entered from the side of its inputs only, from wherever a cable comes', () => {
    const spots = fc.record({
      x: fc.integer({ min: -3000, max: 3000 }),
      y: fc.integer({ min: -2000, max: 2000 }),
    });
    fc.assert(
      fc.property(spots, fc.integer({ min: 0, max: 359 }), (start, turn) => {
        const layout = withBox({ x: 0, y: 0, turn });
        const { outline, body } = obstacleOfBox(layout);
        fc.pre(!isInside(outline, start));
        const { route } = lay(layout, start, 4);
        const { spot, before } = inputPlace(layout, 4);
        expect(route.slice(-2)).toEqual([before, spot]);
        for (const [i, p] of route.slice(0, -1).entries()) {
          expect(passesThrough(outline, route[i - 1] ?? p, p)).toBe(false);
        }
        expect(passesThrough(body, before, spot)).toBe(passesThrough(body, spot, spot));
        expect(route.every(onDeck)).toBe(true);
      }),
    );
  });
});

describe('D2: a box beside the deck', () => {
  it('is reached over the nearest place of the edge, the same for every cable', () => {
    const layout = withBox({ x: -3500, y: 300, turn: 270 });
    for (const start of [
      { x: 0, y: 0 },
      { x: 2000, y: -1500 },
      { x: -2900, y: 1900 },
    ]) {
      const way = lay(layout, start);
      expect(way.edges).toBe(1);
      expect(way.route[1]).toEqual({ x: -3000, y: 300 });
      expect(way.route.slice(2).some(onDeck)).toBe(false);
    }
  });

  it('goes over another place where a stand is on the edge', () => {
    const layout = withBox({ x: -3500, y: 300, turn: 270 });
    const stand = disc('stand', 'base', { x: -2990, y: 300 }, 100);
    const { route, through } = createLayWay(layout, [stand])({ x: 0, y: 0 }, 1);
    expect(through).toEqual([]);
    const over = route.findIndex(({ x }) => x === -3000);
    expect(Math.abs((route[over]?.y ?? 300) - 300)).toBeGreaterThan(140);
    const above = route.slice(0, over + 1);
    expect(above.length).toBeGreaterThan(1);
    expect(above.every((p, i) => !passesThrough(stand.outline, above[i - 1] ?? p, p))).toBe(true);
  });

  it('is gone round on the stage floor when its inputs face away', () => {
    const layout = withBox({ x: -3500, y: 300, turn: 180 });
    const { route } = lay(layout, { x: 0, y: 300 }, null);
    const { body } = obstacleOfBox(layout);
    expect(route.length).toBeGreaterThan(4);
    expect(route.every((p, i) => !passesThrough(body, route[i - 1] ?? p, p))).toBe(true);
  });

  it('that faces the deck from close by is reached straight from the edge', () => {
    const layout = withBox({ x: -3090, y: 300, turn: 0 });
    const { spot } = inputPlace(layout, 2);
    const { route } = lay(layout, { x: 0, y: 300 }, 2);
    expect(route).toEqual([{ x: 0, y: 300 }, { x: -3000, y: 300 }, spot]);
  });
});

describe('D3: a cable that comes down beside the deck', () => {
  it('goes up over the nearest edge to a box on the deck', () => {
    const way = lay(bareLayout, { x: 3400, y: 100 });
    expect(way.edges).toBe(1);
    expect(way.route.slice(0, 2)).toEqual([
      { x: 3400, y: 100 },
      { x: 3000, y: 100 },
    ]);
  });

  it('stays on the stage floor to a box on the same side, and goes over the deck to one on the other', () => {
    const layout = withBox({ x: -3500, y: 300, turn: 90 });
    const near = lay(layout, { x: -3300, y: -800 });
    expect(near.edges).toBe(0);
    expect(near.route.some(onDeck)).toBe(false);
    const far = lay(layout, { x: 3400, y: 300 });
    expect(far.edges).toBe(2);
    expect(far.route.slice(1, 3)).toEqual([
      { x: 3000, y: 300 },
      { x: -3000, y: 300 },
    ]);
    expect(wayLength(far.route)).toBeGreaterThan(6400);
  });
});
