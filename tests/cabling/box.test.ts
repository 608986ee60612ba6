import { describe, expect, it } from 'vitest';
import { boxIsOnDeck, boxObstacle, inputPlace, obstacleOfBox } from '../../src/cabling/box.ts';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import { gap } from '../../src/geometry/plan.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { bareLayout } from './scenes.ts';

const withBox = (box: Partial<Layout['box']>, keepAway = 50): Layout => ({
  ...bareLayout,
  box: { ...bareLayout.box, ...box },
  cabling: { ...bareLayout.cabling, keepAway },
});
const spotOf = (layout: Layout, input: number | null) => inputPlace(layout, input).spot;

describe('the box', () => {
  it('B1: has input 1 at the left end for someone who looks at the inputs, the second row over the first', () => {
    // Facing the audience (+y), seen from there: the left end is on the player's right.
    const layout = withBox({ x: 100, y: 200, turn: 90, inputs: 12 });
    expect(spotOf(layout, 1).x).toBeCloseTo(200, 9);
    expect(spotOf(layout, 6).x).toBeCloseTo(0, 9);
    expect(spotOf(layout, 7)).toEqual(spotOf(layout, 1));
    expect(spotOf(layout, 12)).toEqual(spotOf(layout, 6));
    expect(spotOf(layout, 1).y).toBeCloseTo(275, 9);
  });

  it('B3: is come to straight on over 100 mm, from outside its outline, at every distance to keep', () => {
    for (const keepAway of [0, 50, 99, 100, 300]) {
      for (const turn of [0, 17, 90, 211]) {
        const layout = withBox({ turn, inputs: 24 }, keepAway);
        const { outline, body } = obstacleOfBox(layout);
        for (const input of [1, 12, 13, 24, null]) {
          const { spot, before } = inputPlace(layout, input);
          expect(gap(spot, before)).toBeCloseTo(Math.max(100, keepAway + 1), 9);
          expect(isInside(outline, before)).toBe(false);
          const middle = { x: (spot.x + layout.box.x) / 2, y: (spot.y + layout.box.y) / 2 };
          expect(isInside(body, middle)).toBe(true);
        }
      }
    }
  });

  it('B4: a run without an input, or with one that is not there, leads to the middle of that side', () => {
    const layout = withBox({ x: 0, y: 0, turn: 0, inputs: 8 });
    expect(spotOf(layout, null)).toEqual({ x: 75, y: 0 });
    expect(spotOf(layout, 9)).toEqual({ x: 75, y: 0 });
    expect(spotOf(layout, 8)).toEqual({ x: 75, y: 140 });
  });

  it('is an obstacle on the deck only when it stands there', () => {
    const on = withBox({ x: -3000, y: 0 });
    const beside = withBox({ x: -3001, y: 0 });
    expect([boxIsOnDeck(on), boxIsOnDeck(beside)]).toEqual([true, false]);
    expect([boxObstacle(on).length, boxObstacle(beside).length]).toEqual([1, 0]);
  });
});
