import { useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { CheckOutcome } from '../../layout/patch.ts';
import {
  type CheckStep,
  checkSummary,
  clearChecks,
  nextStep,
  recordCheck,
} from '../../patch/lineCheck/lineCheck.ts';
import type { PatchReport } from '../../report/patch.ts';
import type { PlanMark } from '../../session/patchView.ts';
import { TextField } from '../fields/TextField.tsx';
import { usePanel } from '../panel/usePanel.ts';
import { BoxInput } from './BoxInput.tsx';
import { editPatch } from './usePatch.ts';
import { usePlanMarks } from './usePlanMarks.ts';

const STATES: Readonly<Record<CheckStep['state'], string>> = {
  pass: '✓ passed',
  fail: '✗ failed',
  skip: 'skipped',
  open: 'not checked',
  stale: 'changed since, check again',
};

const PHANTOM: Readonly<Record<CheckStep['phantom'], string>> = {
  'leave-on': '48 V is on and belongs there.',
  'leave-off': 'No 48 V here: leave it off.',
  'switch-on': 'Mute, then switch 48 V on: this mic needs it.',
  'switch-off': 'Mute, then switch 48 V off: it does not belong here.',
};

/** The line check: one input at a time, in the order of the list. */
export function LineCheck({ patch }: { readonly patch: PatchReport }) {
  const { steps } = patch;
  const panel = usePanel();
  usePlanMarks({ shows: 'lineCheck', marks: marksOf(steps) });
  const [chosen, setChosen] = useState<Id | null>(null);
  const step = steps.find(({ row }) => row.id === chosen) ?? nextStep(steps, null);
  const go = (next: CheckStep | null) => {
    setChosen(next?.row.id ?? null);
    panel.point(null, next ? { kind: 'mic', id: next.row.mic } : null);
  };
  const { pass, fail, skip, open, stale, isGood } = checkSummary(steps);
  const said = (outcome: CheckOutcome, note: string) => {
    if (!step) return;
    editPatch(`Line check: ${step.row.name}`, (from) => recordCheck(from, step.row, outcome, note));
    go(after(steps, step));
  };
  return (
    <>
      <p role="status" className="check-summary">
        {isGood ? 'Every line passed. ' : ''}
        {pass} passed, {fail} failed, {skip} skipped, {open + stale} to check
      </p>
      {step ? (
        <CheckCard key={step.row.id} step={step} onSay={said} />
      ) : (
        <p>{steps.length === 0 ? 'No lines yet.' : 'Every line has been checked.'}</p>
      )}
      <ol className="lines" aria-label="Lines">
        {steps.map((each) => (
          <li key={each.row.id} className={each === step ? 'line shown' : 'line'}>
            <button type="button" className="line-button" onClick={() => go(each)}>
              <span className="channel-number">{each.row.channel}</span>
              <span className="line-text">
                <span className="line-name">{each.row.name}</span>
                <span className={`line-note check-${each.state}`}>
                  {STATES[each.state]}
                  {each.note === '' ? '' : `: ${each.note}`}
                </span>
              </span>
              <BoxInput input={each.row.input} />
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

interface CheckCardProps {
  readonly step: CheckStep;
  readonly onSay: (outcome: CheckOutcome, note: string) => void;
}

function CheckCard({ step, onSay }: CheckCardProps) {
  const { row, phantom, state } = step;
  const [note, setNote] = useState(step.note);
  return (
    <section className="check-card" aria-label={`Check channel ${row.channel}`}>
      <h3>
        Channel {row.channel}: {row.name}
      </h3>
      <p className="check-where">
        Box input <BoxInput input={row.input} /> {row.micClass.name}
      </p>
      <p>
        {PHANTOM[phantom]} {state === 'open' ? '' : `Now: ${STATES[state]}.`}
      </p>
      <TextField label="Note" value={note} most={200} mayBeEmpty onSet={setNote} />
      <div className="check-buttons">
        <button type="button" className="check-big pass" onClick={() => onSay('pass', note)}>
          ✓ Pass
        </button>
        <button type="button" className="check-big fail" onClick={() => onSay('fail', note)}>
          ✗ Fail
        </button>
        <button type="button" className="check-big" onClick={() => onSay('skip', note)}>
          Skip
        </button>
      </div>
    </section>
  );
}
