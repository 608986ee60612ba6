import { describe, expect, test } from 'vitest';
import type { Hold } from '../../../src/editor/tools/drag.ts';
import { heightDragOf } from '../../../src/editor/tools/dragHeight.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { clipMount } from '../../../src/layout/mics/mount.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { clipIn } from '../../../src/report/ring.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';
import type { Selection } from '../../../src/session/selection.ts';
import { kit, micAfter, pieceAfter, pieceOf, standMic } from '../support.ts';

const layout = kit('five-piece-one-rack');
const open = { layout, report: createAnalyst()(layout) };
const NEAR = 10;
const place = (x: number, y: number) => ({ kit: { x, y }, deck: { x, y } });
const hold: Hold = {
  from: place(300, 700),
  near: NEAR,
  pxPerMm: 0.5,
  ring: () => null,
  nameOf: ({ name }) => name,
};

/** The layout after the finger went so far to the right and up; undefined where nothing can be dragged. */
function dragged(selection: Selection, grip: 'whole' | 'tip' | 'base', by: [number, number]) {
  const drag = heightDragOf({ selection, grip }, open)?.(hold);
  return drag?.to(place(300 + by[0], 700 + by[1]))(layout);
}
const needed = (found: Layout | undefined): Layout => {
  if (!found) throw new Error('expected a drag');
  return found;
};

describe('E2: a drag in an elevation', () => {
  test('raises a piece by as much as the finger, and leaves its place on the plan', () => {
    const snare = pieceOf(layout, 'snare');
    const selection = { kind: 'piece', id: snare.id } as const;
    const moved = needed(dragged(selection, 'whole', [400, 85]));
    expect(pieceAfter(moved, snare.id)).toEqual({ ...snare, z: snare.z + 85 });
  });

  test('raises the front of a stand mic; its base and its place stay', () => {
    const { mic, mount } = standMic(layout);
    const moved = needed(dragged({ kind: 'mic', id: mic.id }, 'tip', [-50, -60]));
    expect(micAfter(moved, mic.id).mount).toEqual({
      ...mount,
      tip: { ...mount.tip, z: mount.tip.z - 60 },
    });
  });

  test('raises the mast; the mic stays where it is', () => {
    const { mic } = standMic(layout);
    const clutch = placeMic(mic, layout).stand?.clutch.z ?? Number.NaN;
    const moved = needed(dragged({ kind: 'mic', id: mic.id }, 'whole', [0, 40]));
    const placed = placeMic(micAfter(moved, mic.id), moved);
    expect(placed.stand?.clutch.z).toBeCloseTo(Math.round(clutch + 40), 6);
    expect(placed.tip).toEqual(placeMic(mic, layout).tip);
  });

  test('raises a clip square to its head, so that the tip follows the finger', () => {
    const id = layout.mics.find(({ mount }) => mount.kind === 'clip')?.id ?? '';
    const clip = clipIn(layout, id);
    if (!clip) throw new Error('expected a clip');
    const moved = needed(dragged({ kind: 'mic', id }, 'tip', [0, 30]));
    const rise = placeMic(micAfter(moved, id), moved).tip.z - placeMic(clip.mic, layout).tip.z;
    expect(rise).toBeCloseTo(30, 6);
    const mount = clipMount.parse(micAfter(moved, id).mount);
    expect({ ...mount, height: clip.mount.height }).toEqual(clip.mount);
  });

  test('N3: changes nothing until the finger has left the detent', () => {
    const snare = pieceOf(layout, 'snare');
    const selection = { kind: 'piece', id: snare.id } as const;
    expect(dragged(selection, 'whole', [500, NEAR - 1])).toBe(layout);
    expect(dragged(selection, 'whole', [0, NEAR + 1])).not.toBe(layout);
  });

  test('does nothing for what has no height of its own', () => {
    const { mic } = standMic(layout);
    expect(dragged({ kind: 'mic', id: mic.id }, 'base', [0, 50])).toBeUndefined();
    expect(dragged({ kind: 'piece', id: 'throne' }, 'whole', [0, 50])).toBeUndefined();
    expect(dragged({ kind: 'box' }, 'whole', [0, 50])).toBeUndefined();
    const plate = layout.mics.find(({ mount }) => mount.kind === 'plateInKick');
    if (plate) expect(dragged({ kind: 'mic', id: plate.id }, 'tip', [0, 50])).toBeUndefined();
  });
});
