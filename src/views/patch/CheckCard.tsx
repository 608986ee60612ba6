import { type MouseEvent, useEffect, useState } from 'react';
import type { CheckOutcome } from '../../layout/patch.ts';
import type { CheckStep } from '../../patch/lineCheck/lineCheck.ts';
import { TextField } from '../fields/TextField.tsx';
import { BoxInput } from './BoxInput.tsx';
import { CHECK_STATES } from './checkStates.ts';
import { checkWords } from './checkWords.ts';

interface CheckCardProps {
  readonly step: CheckStep;
  /** Whether a click on a button that leads on counts. */
  readonly counts: (event: MouseEvent) => boolean;
  readonly onSay: (outcome: CheckOutcome, note: string) => void;
}

/** The line at hand. Its buttons stay the same from line to line, so that a key goes on where it was. */
export function CheckCard({ step, counts, onSay }: CheckCardProps) {
  const { row, state } = step;
  const [phantom, settings] = checkWords(step);
  const [note, setNote] = useState(step.note);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another line brings its own note
  useEffect(() => setNote(step.note), [row.id]);
  const sayer = (outcome: CheckOutcome) => (event: MouseEvent) => {
    if (counts(event)) onSay(outcome, note);
  };
  return (
    <section className="check-card" aria-label={`Check channel ${row.channel}`}>
      <h3>
        Channel {row.channel}: {row.name}
      </h3>
      <p className="check-where">
        Box input <BoxInput input={row.input} /> {row.micClass.name}
      </p>
      <p>
        {phantom} {state === 'open' ? '' : `Now: ${CHECK_STATES[state]}.`}
      </p>
      <p>{settings}</p>
      <TextField key={row.id} label="Note" value={note} most={200} mayBeEmpty onSet={setNote} />
      <div className="check-buttons">
        <button type="button" className="check-big pass" onClick={sayer('pass')}>
          ✓ Pass
        </button>
        <button type="button" className="check-big fail" onClick={sayer('fail')}>
          ✗ Fail
        </button>
        <button type="button" className="check-big" onClick={sayer('skip')}>
          Skip
        </button>
      </div>
    </section>
  );
}
