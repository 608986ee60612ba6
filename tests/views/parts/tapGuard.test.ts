import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createTapGuard, TAP_GAP } from '../../../src/views/parts/tapGuard.ts';

describe('the guard against a tap on what has not been read', () => {
  it('lets the first tap through, at any time, and not the second of a double tap', () => {
    const guard = createTapGuard();
    guard.shown(0);
    expect(guard.tap(1)).toBe(true);
    expect(guard.tap(200)).toBe(false);
    expect(guard.tap(200 + TAP_GAP)).toBe(true);
  });

  it('counts from the step that a tap led to, however long that took to come', () => {
    const guard = createTapGuard();
    expect(guard.tap(0)).toBe(true);
    guard.shown(900);
    expect(guard.tap(800)).toBe(false);
    expect(guard.tap(1250)).toBe(false);
    expect(guard.tap(1250 + TAP_GAP)).toBe(true);
  });

  it('a step that was chosen in another way takes a tap at once', () => {
    const guard = createTapGuard();
    expect(guard.tap(0)).toBe(true);
    guard.shown(10);
    guard.shown(1000);
    expect(guard.tap(1010)).toBe(true);
  });

  it('taps that count are a gap apart, for any taps', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 900 })), (gaps) => {
        const guard = createTapGuard();
        let time = 0;
        let last = Number.NEGATIVE_INFINITY;
        for (const gap of gaps) {
          time += gap;
          if (guard.tap(time)) {
            expect(time - last).toBeGreaterThanOrEqual(TAP_GAP);
            last = time;
          }
        }
      }),
    );
  });
});
