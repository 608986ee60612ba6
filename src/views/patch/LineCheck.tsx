import { useEffect, useRef, useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { CheckOutcome, CheckResult } from '../../layout/patch.ts';
import {
  type CheckStep,
  checkSummary,
  clearChecks,
  nextStep,
  noteCheck,
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
import { LastSaid } from './LastSaid.tsx';
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
  const noted = (channel: Id, note: string) => {
    editPatch('Note to the line check', (from) => noteCheck(from, channel, note));
    seen.current = resultsNow();
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
        <LastSaid step={lastStep} onUndo={() => last && takeBack(last)} onNote={noted} />
      </div>
      {step ? (
        <CheckCard step={step} steps={steps} counts={counts} onSay={said} />
      ) : (
        <CheckEnd steps={steps} onGo={go} />
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

interface CheckEndProps {
  readonly steps: readonly CheckStep[];
  readonly onGo: (step: CheckStep) => void;
}

/** No line is left: what did not pass is named, the failed first, and a tap checks it again. */
function CheckEnd({ steps, onGo }: CheckEndProps) {
  if (steps.length === 0) return <p>No lines yet.</p>;
  const left = (['fail', 'skip'] as const).flatMap((outcome) =>
    steps.filter(({ state }) => state === outcome),
  );
  if (left.length === 0) return <p>Every line has been checked.</p>;
  return (
    <>
      <p>Gone through to the end. Not every line passed; check again:</p>
      <div className="buttons">
        {left.map((each) => (
          <button key={each.row.id} type="button" onClick={() => onGo(each)}>
            Channel {each.row.channel}: {each.row.name}, {CHECK_STATES[each.state]}
          </button>
        ))}
      </div>
    </>
  );
}
