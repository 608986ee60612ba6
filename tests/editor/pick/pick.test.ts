import { describe, expect, test } from 'vitest';
import { FINGER, grabbed, hitsAt, tapped, touchesAt } from '../../../src/editor/pick/pick.ts';
import {
  outlinesOf,
  type Pickable,
  pickablesOf,
  selectedOutlines,
} from '../../../src/editor/pick/pickables.ts';
import { dragOf } from '../../../src/editor/tools/grab.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { isStruck } from '../../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { kit, pieceOf, standMic } from '../support.ts';

const all = () => true;
const isCymbal = (kind: string) => ['crash', 'ride', 'splash', 'china', 'hiHat'].includes(kind);
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
    const touches = touchesAt(pickables, tom, SCALE);
    expect(grabbed(touches, null, all)?.pickable.selection).toEqual({ kind: 'piece', id: tom.id });
    const chosen = { kind: 'piece', id: kick.id } as const;
    const under = touchesAt(pickables, { x: tom.x, y: kick.y }, SCALE);
    expect(grabbed(under, chosen, all)?.pickable.selection).toEqual(chosen);
  });

  test('P1: what lies on the floor below a cymbal never comes before it; beside it a base is met as ever', () => {
    const part = (id: string, height: number, radius: number): Pickable => ({
      selection: { kind: 'piece', id },
      grip: 'whole',
      fineness: 'broad',
      height,
      outline: { kind: 'line', a: { x: 0, y: 0 }, b: { x: 0, y: 0 }, radius },
    });
    const base = {
      ...part('base', 0, 60),
      grip: 'base',
      fineness: 'fine',
      isOnFloor: true,
    } as const;
    const cable = {
      ...part('cable', 0, 3),
      grip: 'cable',
      fineness: 'line',
      isOnFloor: true,
    } as const;
    const names = (things: readonly Pickable[], x: number) =>
      hitsAt(things, { x, y: 0 }, SCALE).map(({ pickable: { selection } }) =>
        selection.kind === 'piece' ? selection.id : '',
      );
    const crash = part('crash', 1100, 200);
    expect(names([base, cable, crash], 0)).toEqual(['crash', 'base', 'cable']);
    expect(names([base, cable], 0)).toEqual(['base', 'cable']);
    // Even where the cymbal ends within a finger of the base, the finger means what it lies on.
    const beside = part('beside', 1100, 40);
    expect(names([base, beside], 70)[0]).toBe('base');
  });

  test('P1, P3: anywhere on a cymbal of every starting kit a finger meets a mic held over it, or a cymbal or drum, never what they hide', () => {
    for (const { make } of STARTING_KITS) {
      const own = make('kit');
      const report = createAnalyst()(own);
      const things = pickablesOf(own, report, true);
      const cymbals = own.pieces.filter(({ kind }) => isCymbal(kind));
      for (const piece of cymbals) {
        if (!isStruck(piece)) continue;
        for (let round = 0; round < 12; round += 1) {
          const reach = 0.45 * piece.diameter * (round / 12);
          const spot = {
            x: piece.x + reach * Math.cos(round),
            y: piece.y + reach * Math.sin(round),
          };
          const touches = touchesAt(things, spot, SCALE);
          const canDrag = (met: Pickable) => dragOf(met, { layout: own, report }) !== undefined;
          const met = grabbed(touches, null, canDrag)?.pickable;
          expect(met, `${piece.name} ${round}`).toBeDefined();
          expect(met?.isOnFloor, `${piece.name} ${round}`).toBeUndefined();
          expect(touches[0]?.pickable.isOnFloor, `${piece.name} ${round}`).toBeUndefined();
        }
      }
    }
  });

  test('P3: where the likeliest thing can not be dragged, the next that can be is', () => {
    const touches = touchesAt(pickables, pieceOf(layout, 'rackTom'), SCALE);
    const [likeliest] = touches;
    const others = (met: Pickable) => met.selection !== likeliest?.pickable.selection;
    const met = grabbed(touches, likeliest?.pickable.selection ?? null, others)?.pickable;
    expect(met).toBeDefined();
    expect(met?.selection).not.toEqual(likeliest?.pickable.selection);
    expect(grabbed(touches, null, () => false)).toBeUndefined();
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
      const outlines = outlinesOf(pickables, thing);
      expect(outlines.length, JSON.stringify(thing)).toBeGreaterThan(0);
      expect(selectedOutlines(layout, rig, thing)).toEqual(outlines);
    }
    expect(selectedOutlines(layout, rig, null)).toEqual([]);
  });
});
