import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newPiece } from '../../../src/layout/catalogue/defaults/newPiece.ts';
import { offeredMics } from '../../../src/layout/catalogue/offered/offeredMics.ts';
import { changeMic, changePiece } from '../../../src/layout/edit/change.ts';
import { duplicatePiece } from '../../../src/layout/edit/duplicatePiece.ts';
import * as mics from '../../../src/layout/edit/mics.ts';
import { mirrorKit, mirrorPiece, mirrorUnderPlayer } from '../../../src/layout/edit/mirror.ts';
import * as own from '../../../src/layout/edit/ownClasses.ts';
import * as pieces from '../../../src/layout/edit/pieces.ts';
import { remount } from '../../../src/layout/edit/remount.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import { clearSetUp, tickStep } from '../../../src/layout/edit/setUp.ts';
import * as stage from '../../../src/layout/edit/stage.ts';
import { moveThrone } from '../../../src/layout/edit/throne.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { checkLayout } from '../../../src/layout/read.ts';
import { deepFreeze } from '../../support/deepFreeze.ts';
import { randomKit } from '../../support/randomKit.ts';

/** What an edit is tried with: ids that are there and one that is not, numbers from sensible to absurd, texts of any length. */
interface Tried {
  readonly piece: string;
  readonly other: string;
  readonly mic: string;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly text: string;
}
type Edit = (layout: Layout, tried: Tried) => Layout;

const kinds = ['kick', 'snare', 'rackTom', 'floorTom', 'hiHat', 'crash', 'ride', 'china'] as const;
const pose = { tip: { x: 100, y: 700, z: 900 }, axis: { x: 0, y: -0.6, z: -0.8 } };
const at = (list: readonly number[], chosen: number): number =>
  Math.abs(Number.isFinite(chosen) ? Math.trunc(chosen) : 0) % list.length;

const pieceEdits: Record<string, Edit> = {
  addPiece: (l, { a }) =>
    pieces.addPiece(l, newPiece(kinds[at([...kinds.keys()], a)] ?? 'kick', l)),
  movePiece: (l, { piece, a, b }) => pieces.movePiece(l, piece, { x: a, y: b }),
  raisePiece: (l, { piece, a }) => pieces.raisePiece(l, piece, a),
  tiltPiece: (l, { piece, a, b }) => pieces.tiltPiece(l, piece, a, b),
  turnPiece: (l, { piece, a }) => pieces.turnPiece(l, piece, a),
  turnFeet: (l, { piece, a }) => pieces.turnFeet(l, piece, a),
  resizePiece: (l, { piece, a, b }) => pieces.resizePiece(l, piece, a, b),
  renamePiece: (l, { piece, text }) => pieces.renamePiece(l, piece, text),
  setHands: (l, { piece }) => pieces.setHands(l, piece, 'left'),
  duplicatePiece: (l, { piece }) => duplicatePiece(l, piece),
  deletePiece: (l, { piece }) => deletePiece(l, piece),
  mirrorPiece: (l, { piece }) => mirrorPiece(l, piece),
  mirrorKit: (l) => mirrorKit(l),
  mirrorUnderPlayer: (l) => mirrorUnderPlayer(l),
  moveThrone: (l, { a, b }) => moveThrone(l, { x: a, y: b }),
  holdPiece: (l, { piece, other }) =>
    changePiece(l, piece, (each) =>
      'support' in each && each.kind !== 'hiHat'
        ? { ...each, support: { kind: 'held', by: other } }
        : each,
    ),
  changeKind: (l, { piece, other }) =>
    changePiece(l, piece, (each) => l.pieces.find(({ id }) => id === other) ?? each),
};

const micEdits: Record<string, Edit> = {
  addMic: (l, { piece, text }) => {
    const [mic] = offeredMics(l, [piece]);
    return mic ? mics.addMic(l, { ...mic, name: text }) : l;
  },
  deleteMic: (l, { mic }) => mics.deleteMic(l, mic),
  duplicateMic: (l, { mic }) => mics.duplicateMic(l, mic),
  renameMic: (l, { mic, text }) => mics.renameMic(l, mic, text),
  setMicClass: (l, { mic, text }) => mics.setMicClass(l, mic, text),
  setHears: (l, { mic, piece, other }) => mics.setHears(l, mic, [piece, other, piece]),
  setInput: (l, { mic, a }) => mics.setInput(l, mic, a),
  moveMicTip: (l, { mic, a, b, c }) => mics.moveMicTip(l, mic, { x: a, y: b, z: c }),
  moveMicTipOnPlan: (l, { mic, a, b }) => mics.moveMicTip(l, mic, { x: a, y: b }),
  moveMicBase: (l, { mic, a, b }) => mics.moveMicBase(l, mic, { x: a, y: b }),
  moveMic: (l, { mic, a, b }) => mics.moveMic(l, mic, { x: a, y: b }),
  aimMic: (l, { mic, a, b }) => mics.aimMic(l, mic, { azimuth: a, pitch: b }),
  changeClip: (l, { mic, a, b, c }) => mics.changeClip(l, mic, { angle: a, reach: b, pitch: c }),
  clipElsewhere: (l, { mic, piece }) => mics.changeClip(l, mic, { drum: piece }),
  turnMicStand: (l, { mic, a }) => mics.turnMicStand(l, mic, a),
  setMast: (l, { mic, a }) => mics.setMast(l, mic, a),
  setStandClass: (l, { mic }) => mics.setStandClass(l, mic, 'roundBoom'),
  setPlateDepth: (l, { mic, a }) => mics.setPlateDepth(l, mic, a),
  toClip: (l, { mic }) => remount(l, mic, 'clip', pose),
  toStand: (l, { mic }) => remount(l, mic, 'tripodTall', pose),
  toKick: (l, { mic }) => remount(l, mic, 'plateInKick', pose),
  toDeck: (l, { mic }) => remount(l, mic, 'plateOnDeck', pose),
  changeMic: (l, { mic, a, text }) =>
    changeMic(l, mic, (each) => ({ ...each, id: text, name: text, input: a })),
};

const stageEdits: Record<string, Edit> = {
  renameLayout: (l, { text }) => stage.renameLayout(l, text),
  tickStep: (l, { text, a }) => tickStep(l, text, a > 0),
  clearSetUp: (l) => clearSetUp(l),
  setUnits: (l) => stage.setUnits(l, 'in'),
  setMargin: (l, { a }) => stage.setMargin(l, a),
  setVenue: (l, { a, text }) => stage.setVenue(l, { temperature: a, date: text, notes: text }),
  setPlayer: (l, { a, b }) => stage.setPlayer(l, { stature: a, seatHeight: b, leadHand: 'left' }),
  setStick: (l, { a, b }) => stage.setStick(l, { length: a, butt: b }),
  setBody: (l, { a }) => stage.setBody(l, { acromionRadiale: a, biacromialBreadth: undefined }),
  setDeck: (l, { a, b }) => stage.setDeck(l, { width: a, depth: b }),
  moveKit: (l, { a, b, c }) => stage.moveKit(l, { x: a, y: b, turn: c }),
  addStairs: (l, { a, b }) => stage.addStairs(l, { edge: 'left', offset: a, width: b }),
  changeStairs: (l, { a }) => stage.changeStairs(l, 0, { width: a }),
  removeStairs: (l) => stage.removeStairs(l, 0),
  moveBox: (l, { a, b, c }) => stage.moveBox(l, { x: a, y: b, turn: c }),
  setBox: (l, { a, b }) => stage.setBox(l, { inputs: a, tail: b }),
  setCabling: (l, { a, b }) => stage.setCabling(l, { loopAtBox: a, dressing: b }),
  setStock: (l, { a, b }) => stage.setStock(l, a, b),
  addOwnClass: (l, { text, a }) =>
    own.addOwnClass(l, { ...ownClass, id: 'ribbon', name: text, length: a }),
  changeOwnClass: (l, { a }) => own.changeOwnClass(l, 'own-class', { length: a }),
  removeOwnClass: (l) => own.removeOwnClass(l, 'own-class'),
};

const ownClass = {
  id: 'x',
  name: 'Mine',
  length: 100,
  diameter: 30,
  address: 'end',
  patternA: 0.5,
  type: 'dynamic',
  phantom: false,
  connector: 'straight',
  mass: 0.2,
} as const;

const number = fc.oneof(
  fc.double({ min: -1500, max: 1500, noNaN: true }),
  fc.integer({ min: -400, max: 400 }),
  fc.double(),
);
const text = fc.oneof(
  fc.string({ maxLength: 100 }),
  fc.constantFrom('', '2031-05-17', 'ribbon', 'p1', 'x'.repeat(5000)),
);
const cases = randomKit.chain((layout) => {
  const id = fc.constantFrom('nobody', ...layout.pieces.map((piece) => piece.id));
  const mic = fc.constantFrom('nobody', ...layout.mics.map((each) => each.id));
  return fc.record({
    layout: fc.constant(layout),
    tried: fc.record({ piece: id, other: id, mic, a: number, b: number, c: number, text }),
  });
});

describe.each(Object.entries({ ...pieceEdits, ...micEdits, ...stageEdits }))('%s', (_, edit) => {
  test('gives a layout that passes its own check and changes nothing in place', () => {
    fc.assert(
      fc.property(cases, ({ layout, tried }) => {
        const after = edit(deepFreeze(layout), tried);
        expect(checkLayout(after)).toEqual({ ok: true, layout: after });
      }),
      { numRuns: 25 },
    );
  });

  test('keeps the identity of every part that it leaves equal', () => {
    fc.assert(
      fc.property(cases, ({ layout, tried }) => {
        const after = edit(layout, tried);
        const same = (before: unknown, now: unknown): boolean =>
          before === now || JSON.stringify(before) !== JSON.stringify(now);
        for (const key of Object.keys(layout) as (keyof Layout)[]) {
          expect([key, same(layout[key], after[key])]).toEqual([key, true]);
        }
        const things = new Map([...after.pieces, ...after.mics].map((thing) => [thing.id, thing]));
        for (const thing of [...layout.pieces, ...layout.mics]) {
          expect([thing.id, same(thing, things.get(thing.id))]).toEqual([thing.id, true]);
        }
      }),
      { numRuns: 25 },
    );
  });
});

test('an edit of a piece or mic that is not there gives the same layout', () => {
  const tried = { piece: 'nobody', other: 'nobody', mic: 'nobody', a: 10, b: 20, c: 30, text: 'x' };
  const whole = ['addPiece', 'mirrorKit', 'mirrorUnderPlayer', 'moveThrone'];
  fc.assert(
    fc.property(randomKit, (layout) => {
      for (const [name, edit] of Object.entries({ ...pieceEdits, ...micEdits })) {
        if (!whole.includes(name))
          expect([name, edit(layout, tried) === layout]).toEqual([name, true]);
      }
    }),
    { numRuns: 10 },
  );
});
