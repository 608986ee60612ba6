import { useEffect, useRef, useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { CheckOutcome, CheckResult } from '../../layout/patch.ts';
import {
  type CheckStep,
  checkSummary,
  clearChecks,
  nextStep,
  putBackCheck,
  recordCheck,
  takenBack,
} from '../../patch/lineCheck/lineCheck.ts';
import type { PatchReport } from '../../report/patch.ts';
import type { PlanMark } from '../../session/patchView.ts';
import { session } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { useTapGuard } from '../parts/useTapGuard.ts';
import { BoxInput } from './BoxInput.tsx';
import { ChannelNumber } from './ChannelNumber.tsx';
import { CheckCard } from './CheckCard.tsx';
import { CHECK_STATES } from './checkStates.ts';
import { editPatch } from './usePatch.ts';
import { usePlanMarks } from './usePlanMarks.ts';

/** The line check: one input at a time, in the order of the list. */
export function LineCheck({ patch }: { readonly patch: PatchReport }) {
  const { steps } = patch;
  const panel = usePanel();
  usePlanMarks({ shows: 'lineCheck', marks: marksOf(steps) });
  const [chosen, setChosen] = useState<Id | null>(null);
  const step = steps.find(({ row }) => row.id === chosen) ?? nextStep(steps, null);
  const { lineCheck } = useOpen().layout.patch;
  const [last, setLast] = useState<Said | null>(null);
  const seen = useRef<readonly CheckResult[]>(lineCheck);
  const counts = useTapGuard(step?.row.id);
  const go = (next: CheckStep | null) => {
    setChosen(next?.row.id ?? null);
    panel.point(null, next ? { kind: 'mic', id: next.row.mic } : null);
  };
  const { pass, fail, skip, open, stale, isGood } = checkSummary(steps);
  const said = (outcome: CheckOutcome, note: string) => {
    if (!step) return;
    const { row } = step;
    setLast({ channel: row.id, before: lineCheck.find(({ channel }) => channel === row.id) });
    editPatch(`Line check: ${row.name}`, (from) => recordCheck(from, row, outcome, note));
    seen.current = resultsNow();
    go(after(steps, step));
  };
  const takeBack = ({ channel, before }: Said) => {
    editPatch('Take the last result back', (from) => putBackCheck(from, channel, before));
    go(steps.find(({ row }) => row.id === channel) ?? null);
    setLast(null);
  };
  // An undo takes results away behind the walk's back (W3).
  useEffect(() => {
    const now = resultsNow();
    const back = takenBack(steps, seen.current, now);
    seen.current = now;
    if (back) go(back);
  });
  const lastStep = steps.find(({ row }) => row.id === last?.channel);
  return (
    <>
      <div className="check-head">
        <p role="status" className="check-summary">
          {isGood ? 'Every line passed. ' : ''}
          {pass} passed, {fail} failed, {skip} skipped, {open + stale} to check
        </p>
        <LastSaid step={lastStep} onUndo={() => last && takeBack(last)} />
      </div>
      {step ? (
        <CheckCard step={step} steps={steps} counts={counts} onSay={said} />
      ) : (
        <p>{steps.length === 0 ? 'No lines yet.' : 'Every line has been checked.'}</p>
      )}
      <ol className="lines" aria-label="Lines">
        {steps.map((each) => (
          <li key={each.row.id} className={each === step ? 'line shown' : 'line'}>
            <button type="button" className="line-button" onClick={() => go(each)}>
              <ChannelNumber channel={each.row.channel} />
              <span className="line-text">
                <span className="line-name">{each.row.name}</span>
                <span className={`line-note check-${each.state}`}>
                  {CHECK_STATES[each.state]}
                  {each.note === '' ? '' : `: ${each.note}`}
                </span>
              </span>
              <BoxInput named input={each.row.input} />
            </button>
          </li>
        ))}
      </ol>
      <button
        type="button"
        disabled={open === steps.length}
        onClick={() => editPatch('Clear the line check', (from) => clearChecks(from, null))}
      >
        Start over
      </button>
    </>
  );
}

const resultsNow = (): readonly CheckResult[] =>
  session.getState().open?.layout.patch.lineCheck ?? [];

const SIGNS = { pass: '✓', fail: '✗', skip: '–', open: '○', stale: '○' } as const;

/** One mark for each mic: of its channels the worst counts, and all are named. */
function marksOf(steps: readonly CheckStep[]): readonly PlanMark[] {
  return [...new Set(steps.map(({ row }) => row.mic))].flatMap((mic): readonly PlanMark[] => {
    const own = steps.filter(({ row }) => row.mic === mic);
    const worst = WORST.find((one) => own.some(({ state }) => state === one));
    if (worst === undefined) return [];
    const channels = own.map(({ row }) => row.channel).join(', ');
    const sign = worst === 'stale' ? 'open' : worst;
    return [{ about: mic, sign, texts: [`${SIGNS[worst]} ${channels}`] }];
  });
}

const WORST = ['fail', 'stale', 'open', 'skip', 'pass'] as const;

/** The next open step behind one that has just been judged. */
function after(steps: readonly CheckStep[], done: CheckStep): CheckStep | null {
  const judged = steps.map(
    (each): CheckStep => (each === done ? { ...each, state: 'pass' } : each),
  );
  return nextStep(judged, done.row.id);
}

/** The channel that was judged last, and what had come of it before. */
interface Said {
  readonly channel: Id;
  readonly before: CheckResult | undefined;
}

interface LastSaidProps {
  /** The step that was judged last; undefined when none was, or it is gone. */
  readonly step: CheckStep | undefined;
  readonly onUndo: () => void;
}

/** What was said last, and a way back: over the buttons, where it is seen without scrolling. It keeps its place while empty: nothing moves under a finger. */
function LastSaid({ step, onUndo }: LastSaidProps) {
  const isSaid = step && step.state !== 'open';
  return (
    <div className="check-last">
      <p role="status">{isSaid ? `Channel ${step.row.channel} ${CHECK_STATES[step.state]}` : ''}</p>
      {isSaid && (
        <button type="button" onClick={onUndo}>
          Undo<span className="spoken">: channel {step.row.channel}</span>
        </button>
      )}
    </div>
  );
}
