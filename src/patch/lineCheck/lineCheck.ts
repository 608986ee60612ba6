import type { Id } from '../../layout/fields.ts';
import type { CheckOutcome, CheckResult, PatchSettings } from '../../layout/patch.ts';
import type { InputRow } from '../inputList.ts';

/** What to do about 48 V before a line is opened (W2). */
export type PhantomStep = 'leave-on' | 'leave-off' | 'switch-on' | 'switch-off';

/** One step of the line check. */
export interface CheckStep {
  readonly row: InputRow;
  /** `open`: not checked; `stale`: checked, but mic, plug or 48 V changed since. */
  readonly state: CheckOutcome | 'open' | 'stale';
  readonly note: string;
  readonly phantom: PhantomStep;
}

export interface CheckSummary {
  readonly pass: number;
  readonly fail: number;
  readonly skip: number;
  readonly open: number;
  readonly stale: number;
  /** There are lines, and every one passed. */
  readonly isGood: boolean;
}

/**
 * The line check: one step for each row, in the order of the list.
 *
 * W1 A result holds for the mic, class, box input and 48 V that were checked; when one of them changes it is stale.
 * W2 48 V is on where the mic needs it and off everywhere else; the step says what to do where it is not so.
 */
export function lineCheck(
  rows: readonly InputRow[],
  results: readonly CheckResult[],
): readonly CheckStep[] {
  return rows.map((row): CheckStep => {
    const result = results.find(({ channel }) => channel === row.id);
    return {
      row,
      state: result ? (isStill(result, row) ? result.outcome : 'stale') : 'open',
      note: result?.note ?? '',
      phantom: phantomStep(row),
    };
  });
}

/** The next step to do: the first open or stale one after a channel, round to the first; null when all are done. */
export function nextStep(steps: readonly CheckStep[], after: Id | null): CheckStep | null {
  const from = steps.findIndex(({ row }) => row.id === after) + 1;
  const round = [...steps.slice(from), ...steps.slice(0, from)];
  return round.find(({ state }) => state === 'open' || state === 'stale') ?? null;
}

/**
 * W3 Where results are taken away or changed behind the walk's back, as an undo does, it goes back to the first of these lines; null when none
 *    was. Results that come do not move it.
 */
export function takenBack(
  steps: readonly CheckStep[],
  before: readonly CheckResult[],
  now: readonly CheckResult[],
): CheckStep | null {
  const kept = new Set(now);
  const gone = new Set(before.filter((result) => !kept.has(result)).map(({ channel }) => channel));
  return steps.find(({ row }) => gone.has(row.id)) ?? null;
}

export function checkSummary(steps: readonly CheckStep[]): CheckSummary {
  const count = (wanted: CheckStep['state']): number =>
    steps.filter(({ state }) => state === wanted).length;
  return {
    pass: count('pass'),
    fail: count('fail'),
    skip: count('skip'),
    open: count('open'),
    stale: count('stale'),
    isGood: steps.length > 0 && steps.every(({ state }) => state === 'pass'),
  };
}

/** Records what came of a row, in place of what came of it before. Pure. */
export function recordCheck(
  patch: PatchSettings,
  row: InputRow,
  outcome: CheckOutcome,
  note = '',
): PatchSettings {
  const result: CheckResult = { channel: row.id, outcome, note, ...checkedOf(row) };
  const index = patch.lineCheck.findIndex(({ channel }) => channel === row.id);
  const before = patch.lineCheck[index];
  if (!before) return { ...patch, lineCheck: [...patch.lineCheck, result] };
  if (before.outcome === outcome && before.note === note && isStill(before, row)) return patch;
  return { ...patch, lineCheck: patch.lineCheck.with(index, result) };
}

/** Puts back what came of a channel before its last result; undefined: it had not been checked. Pure. */
export function putBackCheck(
  patch: PatchSettings,
  channel: Id,
  before: CheckResult | undefined,
): PatchSettings {
  if (!before) return clearChecks(patch, channel);
  const index = patch.lineCheck.findIndex((result) => result.channel === channel);
  if (index < 0) return { ...patch, lineCheck: [...patch.lineCheck, before] };
  return patch.lineCheck[index] === before
    ? patch
    : { ...patch, lineCheck: patch.lineCheck.with(index, before) };
}

/** Gives what came of a channel another note: what is wrong is often known only after a line was failed. Pure. */
export function noteCheck(patch: PatchSettings, channel: Id, note: string): PatchSettings {
  const index = patch.lineCheck.findIndex((result) => result.channel === channel);
  const before = patch.lineCheck[index];
  if (!before || before.note === note) return patch;
  return { ...patch, lineCheck: patch.lineCheck.with(index, { ...before, note }) };
}

/** Takes one result off; all of them for the next venue with null. */
export function clearChecks(patch: PatchSettings, channel: Id | null): PatchSettings {
  const lineCheckLeft = patch.lineCheck.filter(
    (result) => channel !== null && result.channel !== channel,
  );
  return lineCheckLeft.length === patch.lineCheck.length
    ? patch
    : { ...patch, lineCheck: lineCheckLeft };
}

type Checked = Pick<CheckResult, 'mic' | 'micClass' | 'input' | 'phantom'>;

const checkedOf = ({ mic, micClass, input, supplies }: InputRow): Checked => ({
  mic,
  micClass: micClass.id,
  input,
  phantom: supplies > 0,
});

function isStill(result: CheckResult, row: InputRow): boolean {
  const { mic, micClass, input, phantom } = checkedOf(row);
  return (
    result.mic === mic &&
    result.micClass === micClass &&
    result.input === input &&
    result.phantom === phantom
  );
}

function phantomStep({ micClass, supplies }: InputRow): PhantomStep {
  if (micClass.phantom) return supplies > 0 ? 'leave-on' : 'switch-on';
  return supplies > 0 ? 'switch-off' : 'leave-off';
}
