import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip } from '../../src/layout/edit/mics.ts';
import {
  beginGesture,
  cancelGesture,
  commitGesture,
  edit,
  initialState,
  openLayout,
  previewGesture,
  redo,
  session,
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
  test('an edit is one step, analysed at once; one that changes nothing is none', () => {
    edit('turn', (l) => changeClip(l, 'mic-rack-1', { angle: 270, reach: 60 }));
    expect(steps()).toBe(1);
    const row = session.getState().open?.report.clearances.find(({ mic }) => mic === 'mic-rack-1');
    expect(row?.verdict).toBe('struck');
    edit('nothing', (l) => l);
    expect(steps()).toBe(1);
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

  test('a gesture that is taken back leaves nothing', () => {
    const before = layout();
    beginGesture('drag');
    previewGesture(turn(100));
    cancelGesture();
    expect(layout()).toBe(before);
    expect(steps()).toBe(0);
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
