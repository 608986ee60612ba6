import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Change, changeFrom } from '../../src/geometry/changedParts.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import type { Answers } from '../../src/session/besideAnswers.ts';
import {
  answerBeside,
  answeredOf,
  beginGesture,
  cancelGesture,
  commitGesture,
  initialState,
  newestOf,
  openLayout,
  placeGesture,
  session,
} from '../../src/session/session.ts';

/** Someone who answers when told to, by message: nothing is the same object twice. */
function answerer() {
  const analyse = createAnalyst();
  const asked: { readonly layout: Layout; readonly hear: (change: Change | null) => void }[] = [];
  let toldBefore: Answers | null = null;
  answerBeside({ ask: (layout, hear) => asked.push({ layout, hear }) });
  return {
    asked,
    answer(): void {
      const question = asked.at(-1);
      if (!question) throw new Error('expected a question');
      const { rig: _, ...answers } = analyse(question.layout, true);
      const change = structuredClone(changeFrom(toldBefore, answers));
      toldBefore = answers;
      question.hear(change);
    },
    fail: () => asked.at(-1)?.hear(null),
  };
}

const turn = (angle: number) => (l: Layout) => changeClip(l, 'mic-rack-1', { angle });
const open = () => {
  const { open: now } = session.getState();
  if (!now) throw new Error('expected an open layout');
  return now;
};
const angleIn = ({ mics }: Layout): number | undefined => {
  const mount = mics.find(({ id }) => id === 'mic-rack-1')?.mount;
  return mount?.kind === 'clip' ? mount.angle : undefined;
};
let told = 0;
const place = (angle: number): void => placeGesture(turn(angle), () => (told += 1));
const kit = () =>
  STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') ?? null;

beforeEach(() => {
  told = 0;
  answerBeside(null);
  openLayout(kit());
});
afterEach(() => {
  answerBeside(null);
  session.setState(initialState);
});

describe('answers that are worked out beside the page', () => {
  test('V1 one question at a time, about what is shown newest; the same is not asked again', () => {
    const { asked, answer } = answerer();
    beginGesture('drag');
    for (const angle of [100, 101, 102]) place(angle);
    expect(asked.map(({ layout }) => angleIn(layout))).toEqual([100]);
    answer();
    expect(told).toBe(1);
    place(102);
    expect(asked.map(({ layout }) => angleIn(layout))).toEqual([100, 102]);
    answer();
    place(102);
    place(102);
    expect(asked).toHaveLength(2);
  });

  test('where things are is shown at once; what is said of them is that of a fresh analysis of what was asked', () => {
    const { answer } = answerer();
    beginGesture('drag');
    place(100);
    expect(angleIn(open().layout)).toBe(100);
    expect(open().report.rig).toEqual(createAnalyst()(open().layout).rig);
    answer();
    for (const angle of [105, 110]) place(angle);
    const { report, layout } = answeredOf(open());
    expect(angleIn(layout)).toBe(100);
    expect(report).toEqual(createAnalyst()(layout, true));
    expect(open().report.findings).toBe(report.findings);
    expect(open().report.rig).toEqual(createAnalyst()(open().layout).rig);
  });

  test('V2 answers to a gesture that is over are dropped; the next one asks anew', () => {
    const { asked, answer } = answerer();
    beginGesture('drag');
    place(100);
    cancelGesture();
    const rested = open();
    beginGesture('again');
    place(120);
    answer();
    // There is room for a question now, and nothing new to show.
    expect(told).toBe(1);
    place(120);
    expect(answeredOf(open()).report).toBe(rested.report);
    expect(asked.map(({ layout }) => angleIn(layout))).toEqual([100, 120]);
    answer();
    place(120);
    expect(angleIn(newestOf(open()).layout)).toBe(120);
  });

  test('V3 what did not change is the very same object as before', () => {
    const { answer } = answerer();
    const before = open().report;
    beginGesture('drag');
    place(100);
    answer();
    place(100);
    const { report } = newestOf(open());
    expect(report.player).toBe(before.player);
    const same = report.clearances.filter((row, i) => row === before.clearances[i]);
    expect(same.length).toBeGreaterThanOrEqual(before.clearances.length - 2);
    expect(report.clearances).not.toBe(before.clearances);
  });

  test('V4 one who can’t answer any more is not asked any more: the page answers itself', () => {
    const { asked, fail } = answerer();
    beginGesture('drag');
    place(100);
    fail();
    expect(told).toBe(1);
    place(105);
    expect(asked).toHaveLength(1);
    expect(answeredOf(open())).toBe(open());
    expect(open().report.clearances).toEqual(createAnalyst()(open().layout, true).clearances);
  });

  test('V5 the drawing takes newer answers over at every second look, the newest at once', () => {
    const { answer } = answerer();
    beginGesture('drag');
    const drawn: (number | undefined)[] = [];
    const newest: (number | undefined)[] = [];
    for (const angle of [100, 101, 102, 103, 104]) {
      place(angle);
      drawn.push(angleIn(answeredOf(open()).layout));
      newest.push(angleIn(newestOf(open()).layout));
      answer();
    }
    const start = angleIn(kit() as Layout);
    expect(newest).toEqual([start, 100, 101, 102, 103]);
    expect(drawn).toEqual([start, start, 101, 101, 103]);
  });

  test('V5 when the finger rests, all that is known is drawn in the end, and nothing more is asked for', () => {
    const { asked, answer } = answerer();
    beginGesture('drag');
    place(100);
    answer();
    // As in frames: whoever is told shows again what was shown last.
    for (let shown = 0; shown < told; shown += 1) place(100);
    expect(angleIn(answeredOf(open()).layout)).toBe(100);
    expect(told).toBeLessThan(4);
    expect(asked).toHaveLength(1);
  });

  test('a gesture that is kept is analysed in full, as if there had been no one to ask', () => {
    const { answer } = answerer();
    beginGesture('drag');
    place(100);
    answer();
    place(110);
    commitGesture();
    expect(answeredOf(open())).toBe(open());
    expect(newestOf(open())).toBe(open());
    expect(open().report).toEqual(createAnalyst()(open().layout));
  });
});
