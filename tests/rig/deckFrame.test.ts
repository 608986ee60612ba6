import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outsideOutline } from '../../src/geometry/planSegments.ts';
import { deckOutline, toDeck, toKit } from '../../src/rig/deckFrame.ts';

const mm = fc.double({ min: -20_000, max: 20_000, noNaN: true });
const spot = fc.record({ x: mm, y: mm });
const deck = fc.record({
  kit: fc.record({ x: mm, y: mm, turn: fc.integer({ min: -360, max: 360 }) }),
});

describe('toDeck and toKit (D1)', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(deck, spot, (on, p) => {
        const back = toKit(on, toDeck(on, p));
        expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-9);
        const again = toDeck(on, toKit(on, p));
        expect(Math.hypot(again.x - p.x, again.y - p.y)).toBeLessThan(1e-9);
      }),
    );
  });

  it('keep distances', () => {
    fc.assert(
      fc.property(deck, spot, spot, (on, p, q) => {
        const [a, b] = [toDeck(on, p), toDeck(on, q)];
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(Math.hypot(p.x - q.x, p.y - q.y), 6);
      }),
    );
  });

  it('turn anticlockwise, and exactly by quarter turns', () => {
    const on = { kit: { x: 100, y: -700, turn: 90 } };
    expect(toDeck(on, { x: 300, y: 40 })).toEqual({ x: 60, y: -400 });
    expect(toKit(on, { x: 60, y: -400 })).toEqual({ x: 300, y: 40 });
  });
});

describe('deckOutline (D2)', () => {
  it('runs anticlockwise round a deck of its width and depth', () => {
    const outline = deckOutline({ width: 3000, depth: 2000 });
    expect(outsideOutline(outline, { x: 0, y: 0 })).toBe(-1000);
    expect(outsideOutline(outline, { x: 1600, y: 0 })).toBe(100);
    expect(outsideOutline(outline, { x: 0, y: 1050 })).toBe(50);
  });
});
