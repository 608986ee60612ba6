import { describe, expect, test } from 'vitest';
import { FINGER, grabbed, hitsAt, tapped } from '../../../src/editor/pick/pick.ts';
import { outlinesOf, type Pickable, pickablesOf } from '../../../src/editor/pick/pickables.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { kit, pieceOf, standMic } from '../support.ts';

const SCALE = 0.25;
const layout = kit('five-piece-two-racks');
const rig = buildRig(layout);
const pickables = pickablesOf(layout, { rig, runs: [] }, true);
const at = (x: number, y: number) => hitsAt(pickables, { x, y }, SCALE);
const first = (x: number, y: number) => at(x, y)[0]?.pickable.selection;

describe('what a finger can mean', () => {
  test('P1: a mic wins over the drum it hangs over, within a finger of its tip', () => {
    for (const { mic, tip } of rig.mics) {
      expect(first(tip.x, tip.y)).toEqual({ kind: 'mic', id: mic.id });
    }
    const { tip, mic } = rig.mics[0] ?? { tip: { x: 0, y: 0 }, mic: { id: '' } };
    const beside = at(tip.x, tip.y + (FINGER - 2) / SCALE);
    expect(
      beside.some((hit) => 'id' in hit.pickable.selection && hit.pickable.selection.id === mic.id),
    ).toBe(true);
  });

  test('P1: of broad things one over the other the highest is met first', () => {
    const broad = (id: string, height: number): Pickable => ({
      selection: { kind: 'piece', id },
      grip: 'whole',
      fineness: 'broad',
      height,
      outline: { kind: 'line', a: { x: 0, y: 0 }, b: { x: 0, y: 0 }, radius: 150 },
    });
    const hits = hitsAt([broad('low', 500), broad('high', 1000)], { x: 20, y: 0 }, SCALE);
    expect(hits.map((hit) => hit.pickable.height)).toEqual([1000, 500]);
  });

  test('P1: each thing is met once, however many of its parts are under the finger', () => {
    for (let x = -1000; x <= 1000; x += 125) {
      for (let y = -400; y <= 1600; y += 125) {
        const names = at(x, y).map((hit) => JSON.stringify(hit.pickable.selection));
        expect(new Set(names).size).toBe(names.length);
      }
    }
  });

  test('P2: taps on one spot go through everything there, round and round', () => {
    const { x, y } = pieceOf(layout, 'rackTom');
    const hits = at(x, y + 60);
    expect(hits.length).toBeGreaterThan(1);
    let selected = tapped(hits, null, false);
    const visited = [selected];
    for (let tap = 1; tap < hits.length; tap += 1) {
      selected = tapped(hits, selected, true);
      visited.push(selected);
    }
    expect(visited).toEqual(hits.map((hit) => hit.pickable.selection));
    expect(tapped(hits, selected, true)).toEqual(visited[0]);
    expect(tapped(hits, selected, false)).toEqual(visited[0]);
  });

  test('P2: a tap on nothing selects nothing', () => {
    expect(tapped(at(-5000, 9000), { kind: 'box' }, false)).toBeNull();
  });

  test('P3: a drag takes what is selected where it lies under other things', () => {
    const tom = pieceOf(layout, 'rackTom');
    const kick = pieceOf(layout, 'kick');
    const hits = at(tom.x, tom.y);
    expect(grabbed(hits, null)?.pickable.selection).toEqual({ kind: 'piece', id: tom.id });
    const chosen = { kind: 'piece', id: kick.id } as const;
    const under = at(tom.x, kick.y);
    expect(grabbed(under, chosen)?.pickable.selection).toEqual(chosen);
  });

  test('a stand mic is met by its base and by its boom', () => {
    const { mic, mount } = standMic(layout);
    const base = at(mount.base.x, mount.base.y).find(
      ({ pickable }) => pickable.selection.kind === 'mic' && pickable.selection.id === mic.id,
    );
    expect(base?.pickable.grip).toBe('base');
    const placed = rig.mics.find((one) => one.mic.id === mic.id);
    const boom = placed?.solids.find(({ part }) => part === 'boom')?.capsule;
    if (!boom) throw new Error('expected a boom');
    const middle = { x: (boom.a.x + 2 * boom.b.x) / 3, y: (boom.a.y + 2 * boom.b.y) / 3 };
    expect(
      hitsAt(pickables, middle, 2).some(
        ({ pickable }) => pickable.selection.kind === 'mic' && pickable.selection.id === mic.id,
      ),
    ).toBe(true);
  });

  test('the box and the deck’s edge can be met; the empty deck means nothing', () => {
    const { box, deck } = layout;
    const origin = { x: box.x - deck.kit.x, y: box.y - deck.kit.y };
    expect(first(origin.x, origin.y)).toEqual({ kind: 'box' });
    const corner = { x: deck.width / 2 - deck.kit.x, y: deck.depth / 2 - deck.kit.y };
    expect(first(corner.x, corner.y)).toEqual({ kind: 'deck' });
    expect(first(corner.x - 150, corner.y - 150)).toBeUndefined();
  });

  test('everything that can be selected has an outline to show it by', () => {
    const all = [
      ...layout.pieces.map(({ id }) => ({ kind: 'piece', id }) as const),
      ...layout.mics.map(({ id }) => ({ kind: 'mic', id }) as const),
      { kind: 'box' } as const,
      { kind: 'deck' } as const,
      { kind: 'player' } as const,
    ];
    for (const thing of all) {
      expect(outlinesOf(pickables, thing).length, JSON.stringify(thing)).toBeGreaterThan(0);
    }
  });
});
