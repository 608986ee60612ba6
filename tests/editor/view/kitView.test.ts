import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  directionOnScreen,
  kitToScreen,
  moveInKit,
  screenToKit,
} from '../../../src/editor/view/kitView.ts';
import { moveKit } from '../../../src/layout/edit/stage.ts';
import { kit, viewOf } from '../support.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const turnedKit = fc
  .record({
    turn: number(0, 359),
    x: number(-500, 500),
    y: number(-500, 500),
    seenFrom: fc.constantFrom('house' as const, 'player' as const),
  })
  .map(({ seenFrom, ...to }) => viewOf(moveKit(kit('four-piece-jazz'), to), seenFrom));
const point = fc.record({ x: number(0, 800), y: number(0, 760) });

describe('kit points on the screen', () => {
  test('a point of the screen comes back through deck and kit, however the kit is turned', () => {
    fc.assert(
      fc.property(turnedKit, point, (kitView, p) => {
        const back = kitToScreen(kitView, screenToKit(kitView, p));
        expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-6);
      }),
    );
  });

  test('a move of so many px is a move of so many px divided by the scale, in mm', () => {
    fc.assert(
      fc.property(turnedKit, point, (kitView, by) => {
        const { x, y } = moveInKit(kitView, by);
        expect(Math.hypot(x, y) * kitView.view.scale).toBeCloseTo(Math.hypot(by.x, by.y), 6);
      }),
    );
  });

  test('for the house, forward is down the screen and the player’s right is on the left', () => {
    const house = viewOf(kit('four-piece-jazz'), 'house');
    expect(directionOnScreen(house, { x: 0, y: 1 }).y).toBeCloseTo(1, 9);
    expect(directionOnScreen(house, { x: 1, y: 0 }).x).toBeCloseTo(-1, 9);
    const player = viewOf(kit('four-piece-jazz'), 'player');
    expect(directionOnScreen(player, { x: 0, y: 1 }).y).toBeCloseTo(-1, 9);
    expect(directionOnScreen(player, { x: 1, y: 0 }).x).toBeCloseTo(1, 9);
  });
});
