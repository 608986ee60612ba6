import { describe, expect, test } from 'vitest';
import { handleAt } from '../../../src/editor/tools/grab.ts';
import { handlesOf } from '../../../src/editor/tools/handles.ts';
import { thingsOf } from '../../../src/editor/tools/things.ts';
import { kitToScreen } from '../../../src/editor/view/kitView.ts';
import { zoomed } from '../../../src/editor/view/view.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { kit, viewOf } from '../support.ts';

describe('handles', () => {
  test('H1: no two handles of one thing are nearer than a finger, in every starting kit at three zooms', () => {
    for (const { make } of STARTING_KITS) {
      const layout = make('kit');
      const rig = buildRig(layout);
      const fitted = viewOf(layout);
      for (const factor of [0.6, 1, 3]) {
        const view = zoomed(fitted.view, factor, { x: 400, y: 380 });
        for (const thing of thingsOf(layout)) {
          const handles = handlesOf(layout, rig, thing, { ...fitted, view });
          for (const [i, a] of handles.entries()) {
            for (const b of handles.slice(i + 1)) {
              expect(
                Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y),
                `${JSON.stringify(thing)} ${a.kind} ${b.kind}`,
              ).toBeGreaterThanOrEqual(44 - 1e-9);
            }
            const piece = thing.kind === 'piece' && layout.pieces.find(({ id }) => id === thing.id);
            if (!piece || !('x' in piece)) continue;
            // The middle of a piece is where it is itself taken hold of.
            const middle = kitToScreen({ ...fitted, view }, piece);
            expect(Math.hypot(a.at.x - middle.x, a.at.y - middle.y)).toBeGreaterThanOrEqual(
              44 - 1e-9,
            );
          }
        }
      }
    }
  });

  test('every piece, mic and the box that can be turned, leaned or set has a handle', () => {
    const layout = kit('five-piece-two-racks');
    const rig = buildRig(layout);
    const kindsOf = (id: string) => {
      const kind = layout.mics.some((mic) => mic.id === id) ? 'mic' : 'piece';
      return handlesOf(layout, rig, { kind, id }, viewOf(layout)).map((handle) => handle.kind);
    };
    for (const piece of layout.pieces) {
      const kinds = kindsOf(piece.id);
      if (piece.kind === 'kick' || piece.kind === 'pedal') expect(kinds).toContain('turn');
      else if (piece.kind === 'throne') expect(kinds).toEqual(['feet']);
      else expect(kinds).toContain('lean');
    }
    for (const { id, mount } of layout.mics) {
      const kinds = kindsOf(id);
      if (mount.kind === 'clip') expect(kinds).toEqual(['move']);
      if (mount.kind === 'stand') expect(kinds).toEqual(expect.arrayContaining(['move', 'aim']));
      if (mount.kind === 'plateInKick') expect(kinds).toEqual(['slide']);
    }
    expect(handlesOf(layout, rig, { kind: 'box' }, viewOf(layout))).toHaveLength(1);
  });

  test('a finger takes the nearest handle within 22 px, and none beyond', () => {
    const layout = kit('five-piece-two-racks');
    const rig = buildRig(layout);
    const crash = layout.pieces.find(({ kind }) => kind === 'crash');
    if (!crash) throw new Error('expected a crash');
    const handles = handlesOf(layout, rig, { kind: 'piece', id: crash.id }, viewOf(layout));
    for (const handle of handles) {
      const { x, y } = handle.at;
      expect(handleAt(handles, { x: x + 15, y: y - 15 })).toBe(handle);
    }
    expect(
      handleAt(handles.slice(0, 1), { x: (handles[0]?.at.x ?? 0) + 23, y: handles[0]?.at.y ?? 0 }),
    ).toBeUndefined();
  });
});
