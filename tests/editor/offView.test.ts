import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INSET, offViewBoxes, offViewOf } from '../../src/editor/offView.ts';
import { extentOfAll, FIT_BORDER } from '../../src/editor/view/extent.ts';
import { kitToScreen } from '../../src/editor/view/kitView.ts';
import { fitted, panned, zoomed } from '../../src/editor/view/view.ts';
import { moveMic, moveMicBase } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { kit, pieceOf, standMic, viewOf } from './support.ts';

const layout = kit('five-piece-two-racks');
const rig = buildRig(layout);
const fit = viewOf(layout);

describe('what is off the view', () => {
  test('of a usual kit nothing is told, fitted or zoomed in', () => {
    expect(offViewOf(layout, rig, fit.view, null)).toEqual([]);
    const close = zoomed(fit.view, 8, { x: 100, y: 100 });
    expect(offViewOf(layout, rig, close, null)).toEqual([]);
  });

  test('a mic with its stand 15 m away is told once, at the edge on its side', () => {
    const { mic } = standMic(layout);
    const sides = [
      [{ x: 15_000, y: 0 }, 'left'],
      [{ x: -15_000, y: 0 }, 'right'],
      [{ x: 0, y: 15_000 }, 'bottom'],
    ] as const;
    // For the house the player's right is on the left, and the audience below.
    for (const [by, edge] of sides) {
      const away = moveMic(layout, mic.id, by);
      const [off, ...more] = offViewOf(away, buildRig(away), fit.view, null);
      expect(more).toEqual([]);
      expect(off).toMatchObject({ edge, things: [{ kind: 'mic', id: mic.id }] });
    }
  });

  test('a mic whose place is in view is not told, however far off its stand is', () => {
    const { mic } = standMic(layout);
    const far = moveMicBase(layout, mic.id, { x: 15_000, y: 0 });
    const selection = { kind: 'mic', id: mic.id } as const;
    expect(offViewOf(far, buildRig(far), fit.view, selection)).toEqual([]);
  });

  test('labels are kept from under what points: each box is on the screen, at its edge', () => {
    const { mic } = standMic(layout);
    for (const by of [
      { x: 15_000, y: 0 },
      { x: -15_000, y: 0 },
      { x: 0, y: 15_000 },
    ]) {
      const away = moveMic(layout, mic.id, by);
      const off = offViewOf(away, buildRig(away), fit.view, null);
      const [box] = offViewBoxes(off);
      const at = off[0]?.at ?? { x: Number.NaN, y: Number.NaN };
      if (!box) throw new Error('expected what points at the mic');
      expect(box.left).toBeLessThanOrEqual(at.x);
      expect(box.left + box.width).toBeGreaterThanOrEqual(at.x);
      expect(box.top).toBeLessThanOrEqual(at.y);
      expect(box.top + box.height).toBeGreaterThanOrEqual(at.y);
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.left + box.width).toBeLessThanOrEqual(fit.view.size.width);
    }
  });

  test('things beyond the same edge are told together', () => {
    const { mic } = standMic(layout);
    const both = movePiece(
      moveMic(layout, mic.id, { x: 12_000, y: 0 }),
      pieceOf(layout, 'crash').id,
      { x: 15_000, y: 800 },
    );
    const off = offViewOf(both, buildRig(both), fit.view, null);
    expect(off).toHaveLength(1);
    expect(off[0]?.things).toHaveLength(2);
  });

  test('what is selected is told wherever it is, other things on the deck are not', () => {
    const crash = pieceOf(layout, 'crash');
    const at = kitToScreen(fit, crash);
    const gone = panned(fit.view, { x: -at.x - 50, y: 0 });
    const selection = { kind: 'piece', id: crash.id } as const;
    expect(offViewOf(layout, rig, gone, selection)).toMatchObject([
      { edge: 'left', things: [selection] },
    ]);
    expect(offViewOf(layout, rig, gone, null)).toEqual([]);
  });

  test('wherever a thing is lost the pointer stands inside the screen, and with all shown there is none', () => {
    const { mic } = standMic(layout);
    const coordinate = fc.integer({ min: -18_000, max: 18_000 });
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const away = moveMic(layout, mic.id, { x, y });
        const own = buildRig(away);
        const { size } = fit.view;
        for (const { at } of offViewOf(away, own, fit.view, null)) {
          expect(at.x).toBeGreaterThanOrEqual(INSET.left);
          expect(at.x).toBeLessThanOrEqual(size.width - INSET.right);
          expect(at.y).toBeGreaterThanOrEqual(INSET.top);
          expect(at.y).toBeLessThanOrEqual(size.height - INSET.bottom);
        }
        const all = fitted(fit.view, extentOfAll(away, own), FIT_BORDER);
        expect(offViewOf(away, own, all, { kind: 'mic', id: mic.id })).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
