import { describe, expect, test } from 'vitest';
import { deckExtent, kitExtent } from '../../../src/editor/elevation/extent.ts';
import { inElevation } from '../../../src/editor/elevation/frames.ts';
import { elevationHandles } from '../../../src/editor/elevation/handles.ts';
import { elevationPickables } from '../../../src/editor/elevation/pickables.ts';
import { createTurner } from '../../../src/editor/elevation/turned.ts';
import { hitsAt } from '../../../src/editor/pick/pick.ts';
import { FIT_BORDER } from '../../../src/editor/view/extent.ts';
import { fitted } from '../../../src/editor/view/view.ts';
import { distance, subtract } from '../../../src/geometry/vector.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import { moveKit } from '../../../src/layout/edit/stage.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { figureOf } from '../../../src/report/figure.ts';
import { type Facing, standpointOf } from '../../../src/rig/standpoint.ts';
import { kit, pieceOf, standMic } from '../support.ts';

const layout = moveKit(kit('large-kit'), { x: 120, y: -200, turn: 25 });
const analyse = createAnalyst();
const report = analyse(layout);
const facings: readonly Facing[] = ['front', 'side'];
const UPRIGHT = { kit: { x: 0, y: 0, turn: 0 } };
const turnerFor = (facing: Facing) => createTurner(standpointOf(layout.deck, facing, 'house'));

function seen(facing: Facing) {
  const turner = turnerFor(facing);
  const turned = turner.report(report);
  const figure = turner.figure(figureOf(layout.player, layout.pieces));
  const extent = kitExtent(turned.rig, figure);
  const view = fitted(
    { seenFrom: 'player', size: { width: 780, height: 690 }, centre: { x: 0, y: 0 }, scale: 1 },
    extent,
    FIT_BORDER,
  );
  return { turner, turned, extent, kitView: { view, deck: UPRIGHT } };
}

describe('a turned kit', () => {
  test('E1: every solid keeps its size, and the place of least clearance its distance', () => {
    for (const facing of facings) {
      const { turned } = seen(facing);
      for (const [i, { solids }] of report.rig.mics.entries()) {
        for (const [k, { capsule }] of solids.entries()) {
          const other = turned.rig.mics[i]?.solids[k]?.capsule;
          if (!other) throw new Error('expected a solid');
          expect(distance(other.a, other.b)).toBeCloseTo(distance(capsule.a, capsule.b), 6);
          expect(other.radius).toBe(capsule.radius);
        }
      }
      for (const [i, { nearest }] of report.clearances.entries()) {
        const other = turned.clearances[i]?.nearest;
        if (!nearest || !other) continue;
        const gap = subtract(other.onMic, other.onMoving);
        const own = subtract(nearest.onMic, nearest.onMoving);
        expect(Math.hypot(gap.x, gap.y, gap.z)).toBeCloseTo(Math.hypot(own.x, own.y, own.z), 6);
        expect(gap.y).toBeCloseTo(own.z, 6);
      }
    }
  });

  test('what stays the same comes out the same object', () => {
    const turner = turnerFor('front');
    const before = turner.report(report);
    const snare = pieceOf(layout, 'snare');
    const after = turner.report(
      analyse(movePiece(layout, snare.id, { x: snare.x + 5, y: snare.y })),
    );
    const same = after.rig.pieces.filter((placed, i) => placed === before.rig.pieces[i]);
    expect(same.length).toBe(before.rig.pieces.length - 1);
  });

  test('it lies inside what is fitted, and the deck’s extent holds it', () => {
    for (const facing of facings) {
      const { turned, turner, extent } = seen(facing);
      const deck = deckExtent(layout.deck, turner.standpoint, extent);
      expect(deck.left).toBeLessThanOrEqual(extent.left);
      expect(deck.right).toBeGreaterThanOrEqual(extent.right);
      for (const { tip } of turned.rig.mics) {
        expect(tip.x).toBeGreaterThanOrEqual(extent.left);
        expect(tip.x).toBeLessThanOrEqual(extent.right);
        expect(tip.y).toBeLessThanOrEqual(extent.front);
      }
    }
  });
});

describe('what a finger means in an elevation', () => {
  test('every mic and every piece with a shell is met where it is seen', () => {
    for (const facing of facings) {
      const { turned, kitView } = seen(facing);
      const pickables = elevationPickables(turned.rig);
      const meant = (spot: { x: number; y: number }) =>
        hitsAt(pickables, spot, kitView.view.scale).map(({ pickable }) => pickable.selection);
      for (const { mic, tip } of turned.rig.mics) {
        expect(meant(tip)).toContainEqual({ kind: 'mic', id: mic.id });
      }
      for (const { piece, shells } of turned.rig.pieces) {
        const [shell] = shells;
        if (shell) expect(meant(shell.centre)).toContainEqual({ kind: 'piece', id: piece.id });
      }
    }
  });

  test('of two pieces in line the one nearer to the viewer comes first', () => {
    const { turned, kitView } = seen('front');
    const kick = turned.rig.pieces.find(({ piece }) => piece.kind === 'kick')?.shells[0];
    if (!kick) throw new Error('expected a kick');
    const hits = hitsAt(elevationPickables(turned.rig), kick.centre, kitView.view.scale);
    const depths = hits
      .filter(({ pickable, away }) => pickable.fineness === 'broad' && away <= 4)
      .map(({ pickable }) => pickable.height);
    expect(depths).toEqual([...depths].sort((a, b) => b - a));
  });
});

describe('the handles of an elevation', () => {
  test('H1: a stand has one for the mic and one for the mast, 44 px apart; a piece has one', () => {
    for (const facing of facings) {
      const { turned, kitView } = seen(facing);
      const open = { layout, report };
      const { mic } = standMic(layout);
      const two = elevationHandles(open, turned.rig, { kind: 'mic', id: mic.id }, kitView);
      expect(two).toHaveLength(2);
      const [a, b] = two;
      if (!a || !b) throw new Error('expected two handles');
      expect(Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y)).toBeGreaterThanOrEqual(43.9);
      const snare = pieceOf(layout, 'snare');
      const one = elevationHandles(open, turned.rig, { kind: 'piece', id: snare.id }, kitView);
      expect(one.map(({ kind }) => kind)).toEqual(['raise']);
      expect(elevationHandles(open, turned.rig, { kind: 'box' }, kitView)).toEqual([]);
      expect(elevationHandles(open, turned.rig, null, kitView)).toEqual([]);
    }
  });
});

describe('E3: keys in an elevation', () => {
  const nudge = (x: number, y: number, foot = false) => ({ kind: 'nudge', x, y, foot }) as const;

  test('up and down raise and lower, with Control the mast', () => {
    const { standpoint } = turnerFor('front');
    expect(inElevation(nudge(0, -10), layout.deck, standpoint)).toEqual({ kind: 'raise', by: 10 });
    expect(inElevation(nudge(0, 1), layout.deck, standpoint)).toEqual({ kind: 'raise', by: -1 });
    const mast = inElevation(nudge(0, -50, true), layout.deck, standpoint);
    expect(mast).toEqual({ kind: 'mast', by: 50 });
  });

  test('to the side they move to the right and left of the screen, in both frames', () => {
    for (const facing of facings) {
      const { standpoint } = turnerFor(facing);
      const change = inElevation(nudge(10, 0), layout.deck, standpoint);
      if (change.kind !== 'nudge') throw new Error('expected a nudge');
      const along = standpoint.direction({ ...change.kit, z: 0 });
      expect(along.x).toBeCloseTo(10, 9);
      expect(along.z).toBeCloseTo(0, 9);
      const level = standpointOf(UPRIGHT, facing, 'house');
      expect(level.direction({ x: change.deck.x, y: change.deck.y, z: 0 }).x).toBeCloseTo(10, 9);
    }
  });

  test('every other command is that of the plan', () => {
    const { standpoint } = turnerFor('side');
    for (const command of [
      { kind: 'turn', by: 5, foot: false },
      { kind: 'lean', by: -1 },
      { kind: 'raise', by: 50 },
    ] as const) {
      expect(inElevation(command, layout.deck, standpoint)).toEqual(command);
    }
  });
});
