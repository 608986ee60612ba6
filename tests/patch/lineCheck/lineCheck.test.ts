import { describe, expect, it } from 'vitest';
import { type CheckOutcome, DEFAULT_PATCH, type PatchSettings } from '../../../src/layout/patch.ts';
import { plainChannel } from '../../../src/patch/channels/channel.ts';
import type { InputRow } from '../../../src/patch/inputList.ts';
import {
  checkSummary,
  clearChecks,
  lineCheck,
  nextStep,
  noteCheck,
  putBackCheck,
  recordCheck,
  takenBack,
} from '../../../src/patch/lineCheck/lineCheck.ts';
import { deepFreeze } from '../../support/deepFreeze.ts';
import { demoWithMore, patchWith, rowOf, rowsOf } from '../scenes.ts';

const rows = rowsOf(demoWithMore);
const start = deepFreeze(DEFAULT_PATCH);
const stepOf = (patch: PatchSettings, id: string, list: readonly InputRow[] = rows) =>
  lineCheck(list, patch.lineCheck).find(({ row }) => row.id === id);

/** Walks the list as a user does: always the next step, until there is none. */
function walk(outcomeOf: (row: InputRow) => CheckOutcome): {
  readonly patch: PatchSettings;
  readonly walked: readonly string[];
} {
  let patch: PatchSettings = start;
  const walked: string[] = [];
  for (;;) {
    const step = nextStep(lineCheck(rows, patch.lineCheck), walked.at(-1) ?? null);
    if (!step || walked.length > rows.length) return { patch, walked };
    walked.push(step.row.id);
    patch = deepFreeze(recordCheck(patch, step.row, outcomeOf(step.row), 'heard'));
  }
}

describe('walking the line check', () => {
  it('goes through every row once, in the order of the list, and ends', () => {
    const { patch, walked } = walk(() => 'pass');
    expect(walked).toEqual(rows.map(({ id }) => id));
    expect(checkSummary(lineCheck(rows, patch.lineCheck))).toEqual({
      pass: rows.length,
      fail: 0,
      skip: 0,
      open: 0,
      stale: 0,
      isGood: true,
    });
  });

  it('W3 goes back to the first line whose result was taken away or changed, and stays when results come', () => {
    const { patch } = walk(() => 'pass');
    const steps = lineCheck(rows, []);
    const all = patch.lineCheck;
    expect(takenBack(steps, all, all)).toBeNull();
    expect(takenBack(steps, [], all)).toBeNull();
    expect(takenBack(steps, all, all.slice(0, 2))?.row.id).toBe(rows[2]?.id);
    // The order of the results is not that of the list.
    expect(takenBack(steps, all.toReversed(), [])?.row.id).toBe(rows[0]?.id);
    const [first, second, ...more] = all;
    if (!first || !second) throw new Error('expected two lines');
    expect(takenBack(steps, all, [first, { ...second, outcome: 'fail' }, ...more])?.row.id).toBe(
      second.channel,
    );
  });

  it('sums up what came out; one fail or skip and it is not good', () => {
    for (const bad of ['fail', 'skip'] as const) {
      const { patch } = walk(({ id }) => (id === 'mic-snare' ? bad : 'pass'));
      const summary = checkSummary(lineCheck(rows, patch.lineCheck));
      expect([summary.pass, summary[bad], summary.isGood]).toEqual([rows.length - 1, 1, false]);
    }
  });

  it('nothing to check is not good', () => {
    expect(checkSummary([]).isGood).toBe(false);
    expect(nextStep([], null)).toBeNull();
  });

  it('starts in the middle and comes round to the first', () => {
    const last = rows.at(-1);
    if (!last) throw new Error('rows were expected');
    const patch = recordCheck(start, last, 'pass');
    expect(nextStep(lineCheck(rows, patch.lineCheck), last.id)?.row.id).toBe(rows[0]?.id);
  });
});

describe('results', () => {
  const row = rowOf(rows, 'mic-snare');

  it('a fail keeps its note; a later result takes its place; it can be taken off', () => {
    const failed = deepFreeze(recordCheck(start, row, 'fail', 'crackles'));
    expect(stepOf(failed, row.id)).toMatchObject({ state: 'fail', note: 'crackles' });
    const passed = recordCheck(failed, row, 'pass');
    expect(passed.lineCheck).toHaveLength(1);
    expect(stepOf(passed, row.id)).toMatchObject({ state: 'pass', note: '' });
    expect(clearChecks(passed, row.id)).toEqual(start);
    expect(clearChecks(passed, null)).toEqual(start);
  });

  it('the one before is put back, or none where there was none', () => {
    const failed = deepFreeze(recordCheck(start, row, 'fail', 'crackles'));
    const passed = deepFreeze(recordCheck(failed, row, 'pass'));
    const [before] = failed.lineCheck;
    expect(putBackCheck(passed, row.id, before)).toEqual(failed);
    expect(putBackCheck(passed, row.id, undefined)).toEqual(start);
    expect(putBackCheck(start, row.id, before)).toEqual(failed);
    expect(putBackCheck(failed, row.id, before)).toBe(failed);
    expect(putBackCheck(start, row.id, undefined)).toBe(start);
  });

  it('are the same object without effect', () => {
    const failed = deepFreeze(recordCheck(start, row, 'fail', 'crackles'));
    expect(recordCheck(failed, row, 'fail', 'crackles')).toBe(failed);
    expect(clearChecks(failed, 'mic-hi-hat')).toBe(failed);
    expect(clearChecks(start, null)).toBe(start);
  });

  it('W1: another plug, class or 48 V makes it stale, a new check makes it good again', () => {
    const passed = deepFreeze(recordCheck(start, row, 'pass', 'fine'));
    const changes: readonly InputRow[] = [
      { ...row, input: 12 },
      { ...row, input: null },
      { ...row, micClass: { ...row.micClass, id: 'compact-dynamic' } },
      { ...row, supplies: 1 },
    ];
    for (const changed of changes) {
      const step = lineCheck([changed], passed.lineCheck)[0];
      expect(step).toMatchObject({ state: 'stale', note: 'fine' });
      const again = recordCheck(passed, changed, 'pass', 'fine');
      expect(lineCheck([changed], again.lineCheck)[0]?.state).toBe('pass');
    }
    const renamed = { ...row, name: 'Snare top', channel: 9, notes: 'new' };
    expect(lineCheck([renamed], passed.lineCheck)[0]?.state).toBe('pass');
  });
});

describe('W2 48 V only where it belongs', () => {
  it('tells what to do for a mic that needs it and for one that does not', () => {
    const off = { ...plainChannel('mic-hi-hat', 'mic-hi-hat'), phantom: false };
    const on = { ...plainChannel('mic-snare', 'mic-snare'), phantom: true };
    const wrong = rowsOf(demoWithMore, patchWith({ channels: [off, on] }));
    expect(stepOf(start, 'mic-hi-hat')?.phantom).toBe('leave-on');
    expect(stepOf(start, 'mic-snare')?.phantom).toBe('leave-off');
    expect(stepOf(start, 'mic-hi-hat', wrong)?.phantom).toBe('switch-on');
    expect(stepOf(start, 'mic-snare', wrong)?.phantom).toBe('switch-off');
  });
});

describe('the note of a line', () => {
  it('can be given after its result, which stays; a line that was not checked takes none', () => {
    const { patch } = walk((row) => (row.id === rows[1]?.id ? 'fail' : 'pass'));
    const id = rows[1]?.id ?? '';
    const noted = noteCheck(patch, id, 'Crackles');
    expect(stepOf(noted, id)).toMatchObject({ state: 'fail', note: 'Crackles' });
    expect(noted.lineCheck.filter(({ channel }) => channel !== id)).toEqual(
      patch.lineCheck.filter(({ channel }) => channel !== id),
    );
    expect(noteCheck(noted, id, 'Crackles')).toBe(noted);
    expect(noteCheck(start, id, 'Crackles')).toBe(start);
  });
});
