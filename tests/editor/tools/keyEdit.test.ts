import { describe, expect, test } from 'vitest';
import { heldFor, type KeyChange, keyEdit } from '../../../src/editor/tools/keyEdit.ts';
import { neighbour, thingsOf } from '../../../src/editor/tools/things.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Selection } from '../../../src/session/selection.ts';
import { kit, micAfter, pieceAfter, pieceOf, standMic } from '../support.ts';

const layout = kit('five-piece-two-racks');
const nudge = (x: number, y: number, foot = false): KeyChange => ({
  kind: 'nudge',
  kit: { x, y },
  deck: { x, y },
  foot,
});
const piece = (id: string): Selection => ({ kind: 'piece', id });
const mic = (id: string): Selection => ({ kind: 'mic', id });

describe('what keys change', () => {
  test('everything that can be dragged can be nudged by exactly the step', () => {
    const snare = pieceOf(layout, 'snare');
    expect(pieceAfter(keyEdit(layout, piece(snare.id), nudge(10, -1)), snare.id)).toMatchObject({
      x: snare.x + 10,
      y: snare.y - 1,
    });
    const { mic: on, mount } = standMic(layout);
    expect(micAfter(keyEdit(layout, mic(on.id), nudge(10, 0)), on.id).mount).toMatchObject({
      tip: { x: mount.tip.x + 10 },
      base: mount.base,
    });
    expect(micAfter(keyEdit(layout, mic(on.id), nudge(0, 10, true)), on.id).mount).toMatchObject({
      tip: mount.tip,
      base: { y: mount.base.y + 10 },
    });
    expect(keyEdit(layout, { kind: 'box' }, nudge(10, 50)).box).toMatchObject({
      x: layout.box.x + 10,
      y: layout.box.y + 50,
    });
    expect(keyEdit(layout, { kind: 'deck' }, nudge(10, 0)).deck.kit.x).toBe(layout.deck.kit.x + 10);
  });

  test('every mic and piece answers to nudge and remove; nothing throws on the rest', () => {
    const changes: readonly KeyChange[] = [
      nudge(10, 10),
      nudge(0, 10, true),
      { kind: 'turn', by: 5, foot: false },
      { kind: 'turn', by: 5, foot: true },
      { kind: 'lean', by: 5 },
      { kind: 'raise', by: 10 },
      { kind: 'remove' },
    ];
    for (const thing of thingsOf(layout)) {
      const results = changes.map((change) => keyEdit(layout, thing, change));
      if (thing.kind === 'piece' || thing.kind === 'mic') {
        expect(results[0], JSON.stringify(thing)).not.toBe(layout);
        expect(results.at(-1)).not.toBe(layout);
      }
    }
  });

  test('a key held for so many steps is one change of that many steps', () => {
    const { mic: on } = standMic(layout);
    const changes: readonly KeyChange[] = [
      nudge(10, -10),
      { kind: 'turn', by: 5, foot: true },
      { kind: 'raise', by: 10 },
    ];
    for (const change of changes) {
      let stepwise: Layout = layout;
      for (let step = 0; step < 4; step += 1) stepwise = keyEdit(stepwise, mic(on.id), change);
      expect(keyEdit(layout, mic(on.id), heldFor(change, 4))).toEqual(stepwise);
    }
  });

  test('the Tab key visits every thing once and leaves at both ends', () => {
    const visited: Selection[] = [];
    for (let at = neighbour(layout, null, 1); at !== null; at = neighbour(layout, at, 1)) {
      visited.push(at);
    }
    expect(visited).toEqual(thingsOf(layout));
    expect(visited).toHaveLength(layout.pieces.length + layout.mics.length + 3);
    expect(neighbour(layout, visited[0] ?? null, -1)).toBeNull();
    expect(neighbour(layout, null, -1)).toBeNull();
  });
});
