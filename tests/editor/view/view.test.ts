import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fitted,
  LARGEST_SCALE,
  panned,
  revealing,
  SMALLEST_SCALE,
  stillPoint,
  toDeck,
  toScreen,
  type View,
  zoomed,
} from '../../../src/editor/view/view.ts';
import type { SeenFrom } from '../../../src/rig/standpoint.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const point = fc.record({ x: number(0, 1200), y: number(0, 1200) });
const spot = fc.record({ x: number(-20_000, 20_000), y: number(-20_000, 20_000) });
const viewFrom = (seenFrom: fc.Arbitrary<SeenFrom>): fc.Arbitrary<View> =>
  fc.record({
    seenFrom,
    size: fc.record({ width: number(200, 2000), height: number(200, 2000) }),
    centre: spot,
    scale: number(SMALLEST_SCALE, LARGEST_SCALE),
  });
const anyView = viewFrom(fc.constantFrom('house', 'player'));

const close = (a: { x: number; y: number }, b: { x: number; y: number }, within: number): void => {
  expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(within);
};

describe('the view', () => {
  test('a spot comes back from the screen where it was', () => {
    fc.assert(
      fc.property(anyView, spot, (view, p) => close(toDeck(view, toScreen(view, p)), p, 1e-6)),
    );
  });

  test('lengths on the screen are lengths on the deck times the scale', () => {
    fc.assert(
      fc.property(anyView, spot, spot, (view, p, q) => {
        const [a, b] = [toScreen(view, p), toScreen(view, q)];
        const onScreen = Math.hypot(a.x - b.x, a.y - b.y);
        expect(onScreen).toBeCloseTo(Math.hypot(p.x - q.x, p.y - q.y) * view.scale, 5);
      }),
    );
  });

  test('V1: house and player see the same deck turned by half a turn, never mirrored', () => {
    fc.assert(
      fc.property(viewFrom(fc.constant('house')), spot, (house, p) => {
        const player: View = { ...house, seenFrom: 'player' };
        const [a, b] = [toScreen(house, p), toScreen(player, p)];
        close({ x: a.x + b.x, y: a.y + b.y }, { x: house.size.width, y: house.size.height }, 1e-6);
      }),
    );
  });

  test('the audience is at the bottom for the house and at the top for the player', () => {
    const house = fittedTo('house');
    expect(toScreen(house, { x: 0, y: 1000 }).y).toBeGreaterThan(toScreen(house, { x: 0, y: 0 }).y);
    const player = fittedTo('player');
    expect(toScreen(player, { x: 0, y: 1000 }).y).toBeLessThan(toScreen(player, { x: 0, y: 0 }).y);
    expect(toScreen(player, { x: 1000, y: 0 }).x).toBeGreaterThan(
      toScreen(player, { x: 0, y: 0 }).x,
    );
  });

  test('V2: zooming leaves the spot under the fingers where it is', () => {
    fc.assert(
      fc.property(anyView, point, number(0.2, 5), (view, about, factor) => {
        const still = toDeck(view, about);
        close(toScreen(zoomed(view, factor, about), still), about, 1e-6);
      }),
    );
  });

  test('V4: a button zooms about what is selected while it is in view, else about the middle', () => {
    fc.assert(
      fc.property(anyView, spot, number(0.2, 5), (view, selected, factor) => {
        const at = toScreen(view, selected);
        const { width, height } = view.size;
        const isIn = at.x >= 0 && at.y >= 0 && at.x <= width && at.y <= height;
        const after = zoomed(view, factor, stillPoint(view, selected));
        if (isIn) close(toScreen(after, selected), at, 1e-5);
        else close(after.centre, view.centre, 1e-5);
        close(zoomed(view, factor, stillPoint(view, undefined)).centre, view.centre, 1e-5);
      }),
      { numRuns: 500 },
    );
  });

  test('V3: zooming out stops at the least scale, and leaves alone what is smaller already', () => {
    fc.assert(
      fc.property(anyView, point, number(0.01, 5), number(0, 1), (view, about, factor, least) => {
        const { scale } = zoomed(view, factor, about, least);
        expect(scale).toBeGreaterThanOrEqual(Math.min(view.scale, least) - 1e-9);
        if (factor >= 1) expect(scale).toBe(zoomed(view, factor, about).scale);
        if (factor < 1) expect(scale).toBeLessThanOrEqual(view.scale + 1e-9);
      }),
    );
  });

  test('panning moves every spot by the same px', () => {
    fc.assert(
      fc.property(anyView, spot, point, (view, p, by) => {
        const [a, b] = [toScreen(view, p), toScreen(panned(view, by), p)];
        close({ x: b.x - a.x, y: b.y - a.y }, by, 1e-6);
      }),
    );
  });

  test('a fitted view shows all four corners inside its border', () => {
    for (const seenFrom of ['house', 'player'] as const) {
      const view = fittedTo(seenFrom);
      for (const x of [-1500, 1500]) {
        for (const y of [-1000, 1400]) {
          const at = toScreen(view, { x, y });
          expect(at.x).toBeGreaterThanOrEqual(60 - 1e-9);
          expect(at.x).toBeLessThanOrEqual(view.size.width - 50 + 1e-9);
          expect(at.y).toBeGreaterThanOrEqual(40 - 1e-9);
          expect(at.y).toBeLessThanOrEqual(view.size.height - 70 + 1e-9);
        }
      }
    }
  });

  test('revealing a spot that is in view moves nothing; one outside comes to the border', () => {
    fc.assert(
      fc.property(anyView, spot, (view, p) => {
        const shown = revealing(view, p, 60);
        const at = toScreen(shown, p);
        const before = toScreen(view, p);
        const free = (size: number) => Math.min(60, size / 2);
        const { width, height } = view.size;
        expect(at.x).toBeGreaterThanOrEqual(free(width) - 1e-6);
        expect(at.x).toBeLessThanOrEqual(width - free(width) + 1e-6);
        expect(at.y).toBeGreaterThanOrEqual(free(height) - 1e-6);
        expect(at.y).toBeLessThanOrEqual(height - free(height) + 1e-6);
        const wasIn =
          before.x > 60 && before.x < width - 60 && before.y > 60 && before.y < height - 60;
        if (wasIn) close(shown.centre, view.centre, 1e-6);
      }),
    );
  });
});

const fittedTo = (seenFrom: SeenFrom): View =>
  fitted(
    { seenFrom, size: { width: 800, height: 700 }, centre: { x: 0, y: 0 }, scale: 1 },
    { left: -1500, right: 1500, back: -1000, front: 1400 },
    { top: 40, right: 50, bottom: 70, left: 60 },
  );
