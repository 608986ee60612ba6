import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holdsTwo, panesOf } from '../../src/editor/panes.ts';
import type { Drawing } from '../../src/session/session.ts';

const drawings: readonly Drawing[] = ['plan', 'front', 'side', 'planAndFront', 'planAndSide'];
const size = fc.record({
  width: fc.integer({ min: 200, max: 2500 }),
  height: fc.integer({ min: 150, max: 1800 }),
});

describe('the drawings on the screen', () => {
  test('one fills it, two share it, each beside the other and none over it', () => {
    fc.assert(
      fc.property(size, fc.constantFrom(...drawings), (screen, drawing) => {
        const panes = panesOf(drawing, screen);
        const area = panes.reduce((sum, pane) => sum + pane.size.width * pane.size.height, 0);
        expect(area).toBeLessThanOrEqual(screen.width * screen.height);
        expect(area).toBeGreaterThan(0.98 * screen.width * screen.height);
        for (const { left, top, size: own } of panes) {
          expect(left + own.width).toBeLessThanOrEqual(screen.width);
          expect(top + own.height).toBeLessThanOrEqual(screen.height);
        }
      }),
    );
  });

  test('without room for two the plan stays', () => {
    const small = { width: 390, height: 420 };
    expect(holdsTwo(small)).toBe(false);
    expect(panesOf('planAndSide', small).map(({ kind }) => kind)).toEqual(['plan']);
    expect(panesOf('side', small).map(({ kind }) => kind)).toEqual(['side']);
  });

  test('on a tablet they stand below each other or side by side, as the room is', () => {
    const [, below] = panesOf('planAndFront', { width: 776, height: 697 });
    expect(below).toMatchObject({ kind: 'front', left: 0 });
    const [, beside] = panesOf('planAndSide', { width: 820, height: 524 });
    expect(beside).toMatchObject({ kind: 'side', top: 0 });
  });
});
