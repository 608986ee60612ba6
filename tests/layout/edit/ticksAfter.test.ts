import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fivePieceOneRack } from '../../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import * as mics from '../../../src/layout/edit/mics.ts';
import { addOwnClass, changeOwnClass } from '../../../src/layout/edit/ownClasses.ts';
import * as pieces from '../../../src/layout/edit/pieces.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import * as stage from '../../../src/layout/edit/stage.ts';
import { ticksAfter } from '../../../src/layout/edit/ticksAfter.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { setUpSteps } from '../../../src/report/placement/steps.ts';
import { randomKit } from '../../support/randomKit.ts';

/** A layout with every step of its set-up ticked. */
function allTicked(layout: Layout): Layout {
  const runs = layout.mics.map(({ id, input }) => ({ mic: id, input }));
  return { ...layout, setUp: { done: setUpSteps(layout, runs).map(({ key }) => key) } };
}

const start = allTicked(fivePieceOneRack('kit'));
const onStand = start.mics.find(({ mount }) => mount.kind === 'stand')?.id ?? '';
const onClip = start.mics.find(({ mount }) => mount.kind === 'clip');
const clipped = onClip?.mount.kind === 'clip' ? onClip.mount.drum : '';
const clip = onClip?.id ?? '';

/** The keys that a change takes off, sorted. */
function lost(change: (layout: Layout) => Layout, from = start): readonly string[] {
  const changed = change(from);
  const { done } = ticksAfter(from, changed).setUp;
  return changed.setUp.done.filter((key) => !done.includes(key)).toSorted();
}
const keys = (kind: string): readonly string[] =>
  start.setUp.done.filter((key) => key.startsWith(`${kind}:`));

describe('what is set otherwise loses its tick, and so does the walk round', () => {
  test('a piece that is moved, raised, leaned or turned loses just its own', () => {
    const own = ['check', 'piece:snare'];
    expect(lost((l) => pieces.movePiece(l, 'snare', { x: 333, y: 444 }))).toEqual(own);
    expect(lost((l) => pieces.raisePiece(l, 'snare', 707))).toEqual(own);
    expect(lost((l) => pieces.tiltPiece(l, 'snare', 17))).toEqual(own);
    expect(lost((l) => pieces.turnFeet(l, 'snare', 77))).toEqual(own);
    expect(lost((l) => pieces.resizePiece(l, 'snare', 330))).toEqual(own);
    expect(lost((l) => stage.setPlayer(l, { seatHeight: 555 }))).toEqual(['check', 'piece:throne']);
  });

  test('a clip keeps its tick when its drum moves, and loses it when it goes round the rim', () => {
    expect(lost((l) => pieces.movePiece(l, clipped, { x: 333, y: 444 }))).not.toContain(
      `mic:${clip}`,
    );
    expect(lost((l) => mics.changeClip(l, clip, { angle: 33 }))).toEqual(own(clip));
  });

  test('a mic takes its cable with it, and another input is another cable only', () => {
    expect(lost((l) => mics.moveMicTip(l, onStand, { x: 11, y: 22 }))).toEqual(own(onStand));
    expect(lost((l) => mics.turnMicStand(l, onStand, 33))).toEqual(own(onStand));
    expect(lost((l) => mics.setInput(l, onStand, null))).toEqual(['check', `run:${onStand}`]);
  });

  test('a class of the own that gets longer holds its mics otherwise', () => {
    const { id, ...facts } = {
      id: 'mine',
      name: 'Mine',
      length: 100,
      diameter: 30,
      address: 'end' as const,
      patternA: 0.5,
      type: 'dynamic' as const,
      phantom: false,
      connector: 'straight' as const,
      mass: 0.2,
    };
    const withOwn = addOwnClass(start, { id, ...facts });
    const made = withOwn.ownClasses[0]?.id ?? '';
    const from = mics.setMicClass(withOwn, onStand, made);
    expect(lost((l) => changeOwnClass(l, made, { length: 140 }), from)).toEqual(own(onStand));
    expect(lost((l) => changeOwnClass(l, made, { name: 'Other' }), from)).toEqual([]);
  });

  test('another box is another end of every cable', () => {
    const ends = ['box', 'check', ...keys('run')].toSorted();
    expect(lost((l) => stage.moveBox(l, { x: 100, y: 200 }))).toEqual(ends);
  });

  test('stairs are of the deck alone; with another size or place everything stands otherwise', () => {
    const stairs = { edge: 'left', offset: 0, width: 700 } as const;
    expect(lost((l) => stage.addStairs(l, stairs))).toEqual(['check', 'deck']);
    expect(lost((l) => stage.moveKit(l, { y: -33 }))).toEqual(
      start.setUp.done.filter((key) => key !== 'box').toSorted(),
    );
    for (const size of [{ width: 3210 }, { depth: 2109 }, { height: 321 }]) {
      expect(lost((l) => stage.setDeck(l, size))).toEqual(start.setUp.done.toSorted());
    }
  });

  test('a throne that is moved by itself loses its own alone: all else stands where it stood on the deck', () => {
    for (const turn of [0, 17.3, 90]) {
      const turned = stage.moveKit(start, { turn });
      fc.assert(
        fc.property(
          fc.integer({ min: -400, max: 400 }),
          fc.integer({ min: 1, max: 400 }),
          (x, y) => {
            expect(lost((l) => pieces.movePiece(l, 'throne', { x, y }), turned)).toEqual([
              'check',
              'piece:throne',
            ]);
          },
        ),
        { numRuns: 20 },
      );
    }
  });

  test('a throne that is moved with something else takes all that the measures lead to with it', () => {
    const both = (l: Layout) =>
      pieces.movePiece(pieces.movePiece(l, 'throne', { x: 30, y: 0 }), 'snare', { x: 200, y: 300 });
    expect(lost(both)).toEqual(start.setUp.done.filter((key) => key !== 'box').toSorted());
  });

  test('what goes leaves no tick to what comes in its place', () => {
    const gone = ticksAfter(start, deletePiece(start, 'crash-1'));
    expect(gone.setUp.done).not.toContain('piece:crash-1');
    const crash = start.pieces.find(({ id }) => id === 'crash-1');
    const stale = { ...gone, setUp: start.setUp };
    const back = crash ? pieces.addPiece(stale, crash) : stale;
    expect(ticksAfter(stale, back).setUp.done).not.toContain('piece:crash-1');
  });
});

describe('what stands as it stood keeps its tick', () => {
  test('through names, hands, what is heard, margin, cabling and the tick itself', () => {
    const same: readonly ((layout: Layout) => Layout)[] = [
      (l) => pieces.renamePiece(l, 'snare', 'Other'),
      (l) => pieces.setHands(l, 'snare', 'none'),
      (l) => mics.renameMic(l, onStand, 'Other'),
      (l) => mics.setHears(l, onStand, ['snare', 'crash-1']),
      (l) => stage.renameLayout(l, 'Other'),
      (l) => stage.setMargin(l, 77),
      (l) => stage.setCabling(l, { neatness: 0.123 }),
      (l) => stage.setPlayer(l, { stature: 1801 }),
    ];
    for (const change of same) {
      const changed = change(start);
      expect(changed).not.toBe(start);
      expect(ticksAfter(start, changed)).toBe(changed);
    }
    const untouched = structuredClone(start);
    expect(ticksAfter(start, untouched)).toBe(untouched);
  });

  test('when another piece of any kit is raised', () => {
    fc.assert(
      fc.property(randomKit, fc.nat(), (kit, chosen) => {
        const from = allTicked(kit);
        const raised = from.pieces[chosen % from.pieces.length];
        if (!raised || !('z' in raised)) return;
        const changed = pieces.raisePiece(from, raised.id, raised.z === 700 ? 710 : 700);
        expect(lost(() => changed, from)).toEqual(['check', `piece:${raised.id}`]);
      }),
      { numRuns: 50 },
    );
  });
});

test('the keys are those of the steps of a real report', () => {
  const { runs } = createAnalyst()(start);
  for (const { key } of setUpSteps(start, runs)) expect(start.setUp.done).toContain(key);
});

function own(mic: string): readonly string[] {
  return ['check', `mic:${mic}`, `run:${mic}`];
}
