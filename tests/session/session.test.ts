import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip, duplicateMic } from '../../src/layout/edit/mics.ts';
import { tickStep } from '../../src/layout/edit/setUp.ts';
import { moveBox } from '../../src/layout/edit/stage.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import {
  answeredOf,
  beginGesture,
  beginOffer,
  cancelGesture,
  commitGesture,
  edit,
  initialState,
  keptLayout,
  leaveOffer,
  openLayout,
  ownLayout,
  ownReport,
  placeGesture,
  previewGesture,
  redo,
  select,
  session,
  showPage,
  takeOffer,
  takeOver,
  undo,
} from '../../src/session/session.ts';

const layout = () => session.getState().open?.layout;
const steps = () => session.getState().history.past.length;
const turn = (angle: number) => (l: NonNullable<ReturnType<typeof layout>>) =>
  changeClip(l, 'mic-rack-1', { angle });

beforeEach(() => {
  openLayout(STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') ?? null);
});
afterEach(() => session.setState(initialState));

describe('the session', () => {
  test('an undo that takes away what is selected lets go of it', () => {
    edit('copy', (l) => duplicateMic(l, 'mic-rack-1'));
    const copy = layout()?.mics.at(-1)?.id ?? '';
    select({ kind: 'mic', id: copy });
    undo();
    expect(session.getState().selection).toBeNull();
    select({ kind: 'mic', id: 'mic-rack-1' });
    redo();
    expect(session.getState().selection).toEqual({ kind: 'mic', id: 'mic-rack-1' });
  });

  test('an edit is one step, analysed at once; one that changes nothing is none', () => {
    edit('turn', (l) => changeClip(l, 'mic-rack-1', { angle: 270, reach: 60 }));
    expect(steps()).toBe(1);
    const row = session.getState().open?.report.clearances.find(({ mic }) => mic === 'mic-rack-1');
    expect(row?.verdict).toBe('struck');
    edit('nothing', (l) => l);
    expect(steps()).toBe(1);
  });

  test('a gesture that has ended is analysed as if there had been none', () => {
    const report = () => session.getState().open?.report;
    beginGesture('drag the box');
    previewGesture((l) => moveBox(l, { x: l.box.x - 400, y: l.box.y + 200 }));
    commitGesture();
    const rested = layout();
    expect(rested && createAnalyst()(rested)).toEqual(report());
    beginGesture('to and fro');
    previewGesture((l) => moveBox(l, { x: l.box.x - 400, y: l.box.y + 200 }));
    previewGesture((l) => l);
    commitGesture();
    expect(layout()).toBe(rested);
    expect(rested && createAnalyst()(rested)).toEqual(report());
  });

  test('a gesture is one step however many previews it has, each from where it began', () => {
    const before = layout();
    beginGesture('drag');
    previewGesture(turn(100));
    previewGesture(turn(120));
    commitGesture();
    expect(steps()).toBe(1);
    undo();
    expect(layout()).toBe(before);
    redo();
    expect(layout()?.mics.find(({ id }) => id === 'mic-rack-1')?.mount).toMatchObject({
      angle: 120,
    });
  });

  test('what is placed with nobody to ask is answered at once', () => {
    beginGesture('drag');
    placeGesture(turn(110), () => undefined);
    const { open } = session.getState();
    if (!open) throw new Error('expected an open layout');
    expect(answeredOf(open)).toBe(open);
    expect(open.report.clearances).toEqual(createAnalyst()(open.layout, true).clearances);
    // Things that stayed are the same objects: nothing of them is drawn again.
    const first = open.report.rig;
    placeGesture(turn(120), () => undefined);
    const { mics } = session.getState().open?.report.rig ?? first;
    const moved = mics.filter((placed, i) => placed !== first.mics[i]);
    expect(moved.map(({ mic }) => mic.id)).toEqual(['mic-rack-1']);
    commitGesture();
    const rested = session.getState().open;
    expect(rested?.report).toEqual(rested && createAnalyst()(rested.layout));
  });

  test('without a gesture, or over an offer, nothing runs ahead', () => {
    const before = session.getState().open;
    placeGesture(turn(100), () => undefined);
    expect(session.getState().open).toBe(before);
    beginOffer('offer', turn(90));
    const offered = session.getState().open;
    placeGesture(turn(100), () => undefined);
    expect(session.getState().open).toBe(offered);
  });

  test('a gesture that is taken back leaves nothing', () => {
    const before = layout();
    beginGesture('drag');
    previewGesture(turn(100));
    cancelGesture();
    expect(layout()).toBe(before);
    expect(steps()).toBe(0);
  });

  test('who began a gesture shows and ends only that one: what began meanwhile keeps it and goes on', () => {
    const first = beginGesture('first');
    previewGesture(turn(100), first);
    const second = beginGesture('second');
    expect(steps()).toBe(1);
    previewGesture(turn(120), second);
    const shown = layout();
    previewGesture(turn(90), first);
    placeGesture(turn(90), () => undefined, first);
    cancelGesture(first);
    commitGesture(first);
    expect(layout()).toBe(shown);
    expect(session.getState().gesture).toBe(second);
    expect(steps()).toBe(1);
    commitGesture(second);
    expect(session.getState().history.past.map(({ label }) => label)).toEqual(['first', 'second']);
    // One that was ended by an edit, and one that never began, are as stale.
    const third = beginGesture('third');
    edit('turn', turn(80));
    beginOffer('offer', turn(70));
    cancelGesture(third);
    commitGesture(null);
    expect(session.getState().gesture?.isOffer).toBe(true);
    openLayout(null);
    expect(beginGesture('nothing open')).toBeNull();
  });

  test('what is under way is shown, but not kept before it ends', () => {
    const before = layout();
    beginGesture('drag');
    previewGesture(turn(100));
    expect(keptLayout(session.getState())).toBe(before);
    expect(ownLayout(session.getState())).toBe(layout());
    commitGesture();
    expect(keptLayout(session.getState())).toBe(layout());
  });

  test.each([
    ['another page', () => showPage('sheets'), [], true],
    ['the way back from a page', () => showPage(null), [], true],
    ['another tab’s change', () => takeOver('theirs', fivePieceOneRack('kit')), ['theirs'], true],
    ['another layout', () => openLayout(fivePieceOneRack('other')), [], false],
    ['the list of layouts', () => openLayout(null), [], false],
  ] as const)('%s in the middle of a gesture takes it back', (_, leave, labels, stays) => {
    const before = layout();
    beginGesture('drag');
    previewGesture(turn(100));
    leave();
    expect(session.getState().gesture).toBeNull();
    expect(session.getState().history.past.map(({ label }) => label)).toEqual(labels);
    if (labels.length > 0) undo();
    expect(layout() === before).toBe(stays);
    // The finger is still down: what it does goes nowhere.
    const now = session.getState().open;
    previewGesture(turn(110));
    placeGesture(turn(110), () => undefined);
    commitGesture();
    expect(session.getState().open).toBe(now);
  });

  test('an edit or an undo in the middle of a gesture ends it first', () => {
    const before = layout();
    beginGesture('drag');
    previewGesture(turn(100));
    undo();
    expect(session.getState().gesture).toBeNull();
    expect(layout()).toBe(before);
  });
});

describe('ticks of the set-up list', () => {
  const done = () => layout()?.setUp.done;
  const ticked = ['piece:snare', 'mic:mic-rack-1'];
  beforeEach(() => {
    edit('tick', (l) => ticked.reduce((each, key) => tickStep(each, key, true), l));
  });

  test.each([
    ['an edit', () => edit('turn', turn(100))],
    [
      'a gesture',
      () => {
        beginGesture('drag');
        previewGesture(turn(100));
        commitGesture();
      },
    ],
    [
      'a gesture that another step ends',
      () => {
        beginGesture('drag');
        previewGesture(turn(100));
        edit('nothing', (l) => l);
      },
    ],
    [
      'an offer that is taken',
      () => {
        beginOffer('offer', turn(100));
        takeOffer();
      },
    ],
  ])(
    '%s takes that of the moved thing, in the same step, and undo and redo go with it',
    (_, move) => {
      const before = layout();
      move();
      expect(done()).toEqual(['piece:snare']);
      expect(session.getState().history.past).toHaveLength(2);
      undo();
      expect(layout()).toBe(before);
      redo();
      expect(done()).toEqual(['piece:snare']);
    },
  );

  test('what is taken back or left keeps them', () => {
    beginGesture('drag');
    previewGesture(turn(100));
    cancelGesture();
    beginOffer('offer', turn(100));
    leaveOffer();
    expect(done()).toEqual(ticked);
  });
});

describe('an offer', () => {
  const angle = () => {
    const mount = layout()?.mics.find(({ id }) => id === 'mic-rack-1')?.mount;
    return mount?.kind === 'clip' ? mount.angle : undefined;
  };

  test('is shown and analysed, but not the user’s own until it is taken; then it is one step', () => {
    const before = layout();
    const report = session.getState().open?.report;
    expect(report).toBeDefined();
    expect(ownReport(session.getState())).toBe(report);
    beginOffer('Clear spot', (l) => changeClip(l, 'mic-rack-1', { angle: 270, reach: 60 }));
    expect(angle()).toBe(270);
    const row = session.getState().open?.report.clearances.find(({ mic }) => mic === 'mic-rack-1');
    expect(row?.verdict).toBe('struck');
    expect(ownLayout(session.getState())).toBe(before);
    expect(ownReport(session.getState())).toBe(report);
    expect(steps()).toBe(0);
    takeOffer();
    expect(ownReport(session.getState())).toBe(session.getState().open?.report);
    expect(ownLayout(session.getState())).toBe(layout());
    expect(session.getState().history.past.map(({ label }) => label)).toEqual(['Clear spot']);
    undo();
    expect(layout()).toBe(before);
  });

  test('is left without a trace', () => {
    const before = layout();
    beginOffer('Clear spot', turn(120));
    leaveOffer();
    expect(layout()).toBe(before);
    expect([steps(), session.getState().gesture]).toEqual([0, null]);
    leaveOffer();
    takeOffer();
    expect(layout()).toBe(before);
  });

  test('ends no gesture of the user’s, and is ended by none that did not begin', () => {
    beginOffer('Clear spot', turn(120));
    commitGesture();
    cancelGesture();
    previewGesture(turn(77));
    expect(angle()).toBe(120);
    beginGesture('drag');
    previewGesture(turn(100));
    takeOffer();
    leaveOffer();
    expect(session.getState().gesture?.label).toBe('drag');
    commitGesture();
    expect(steps()).toBe(1);
  });

  test.each([
    ['an edit', () => edit('move', (l) => changeClip(l, 'mic-rack-1', { height: 60 })), 1],
    ['a gesture', () => beginGesture('drag'), 0],
    ['another offer', () => beginOffer('again', (l) => l), 0],
    ['a step back', () => undo(), 0],
    ['a step forward', () => redo(), 0],
  ])('is left by %s', (_, act, left) => {
    const before = angle();
    beginOffer('Clear spot', turn(120));
    act();
    expect(angle()).toBe(before);
    expect(steps()).toBe(left);
  });

  test('a step back leaves the offer and nothing more', () => {
    edit('turn', turn(100));
    beginOffer('Clear spot', turn(120));
    undo();
    expect([angle(), steps()]).toEqual([100, 1]);
  });
});
