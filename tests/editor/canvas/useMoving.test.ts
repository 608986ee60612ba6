import { describe, expect, test } from 'vitest';
import { drawnAtRest, drawnNext, keyOf, movedSince } from '../../../src/editor/canvas/useMoving.ts';
import { moveMicTip } from '../../../src/layout/edit/mics.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { kit, pieceOf, standMic } from '../support.ts';

/** Layouts one after the other, as a drag analyses them: what does not change is the same object. */
function inTurn(...layouts: readonly Layout[]) {
  const analyse = createAnalyst();
  return layouts.map((layout) => ({ layout, report: analyse(layout) }));
}

/** What has moved from one layout to the next. */
function movedTo(layout: Layout) {
  const [first, second] = inTurn(start, layout);
  if (!first || !second) throw new Error('expected two layouts');
  return movedSince(first, second);
}

const start = kit('five-piece-two-racks');
const { mic, mount } = standMic(start);
const withMic = (by: number) => moveMicTip(start, mic.id, { x: mount.tip.x + by, y: mount.tip.y });

describe('what moves while something is dragged', () => {
  test('of a dragged mic: the mic, and no piece or other mic', () => {
    const moving = movedTo(withMic(40));
    expect(moving).toContain(keyOf.mic(mic.id));
    const others = [
      ...start.pieces.map(({ id }) => keyOf.piece(id)),
      ...start.mics.filter(({ id }) => id !== mic.id).map(({ id }) => keyOf.mic(id)),
      keyOf.box,
    ];
    for (const key of others) expect(moving).not.toContain(key);
  });

  test('of a dragged drum: the drum and the clip on it', () => {
    const drum = pieceOf(start, 'floorTom');
    const clip = start.mics.find((one) => one.mount.kind === 'clip' && one.mount.drum === drum.id);
    if (!clip) throw new Error('expected a clip on the floor tom');
    const moving = movedTo(movePiece(start, drum.id, { x: 650, y: 250 }));
    expect(moving).toContain(keyOf.piece(drum.id));
    expect(moving).toContain(keyOf.mic(clip.id));
    expect(moving).not.toContain(keyOf.piece(pieceOf(start, 'crash').id));
  });

  test('of the box: the box, no thing of the kit', () => {
    const box = { ...start.box, x: start.box.x - 200 };
    expect([...movedTo({ ...start, box })]).toEqual([keyOf.box]);
  });

  test('what is gone: it does not stay where it stood still', () => {
    const without = { ...start, mics: start.mics.filter((one) => one.id !== mic.id) };
    expect(movedTo(without)).toContain(keyOf.mic(mic.id));
  });

  test('another layout has not moved: it is another', () => {
    expect(movedTo({ ...start, id: 'other', box: { ...start.box, x: 0 } }).size).toBe(0);
  });
});

describe('which layer draws it', () => {
  const [before, ten, twelve, back] = inTurn(start, withMic(10), withMic(12), start);
  if (!before || !ten || !twelve || !back) throw new Error('expected four layouts');

  test('at rest all is still, whatever changed', () => {
    const drawn = drawnAtRest(before);
    expect(drawnNext(drawn, before, false)).toBe(drawn);
    expect(drawnNext(drawn, ten, false)).toEqual(drawnAtRest(ten));
  });

  test('during a drag nothing changes between the layers after its first frame', () => {
    const first = drawnNext(drawnAtRest(before), ten, true);
    expect(first.still).toBe(before);
    expect(first.moving).toContain(keyOf.mic(mic.id));
    expect(drawnNext(first, twelve, true)).toBe(first);
  });

  test('what has moved once stays with what moves until the drag ends, then all is still', () => {
    const first = drawnNext(drawnAtRest(before), ten, true);
    expect(drawnNext(first, back, true).moving).toEqual(first.moving);
    expect(drawnNext(first, back, false)).toEqual(drawnAtRest(back));
  });
});
