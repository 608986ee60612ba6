import { type MouseEvent, useEffect, useState } from 'react';
import type { CheckOutcome } from '../../layout/patch.ts';
import type { CheckStep } from '../../patch/lineCheck/lineCheck.ts';
import { TextField } from '../fields/TextField.tsx';
import { BoxInput } from './BoxInput.tsx';
import { CHECK_STATES } from './checkStates.ts';
import { checkWords } from './checkWords.ts';

/** As long as the note of a line may be. */
export const NOTE_MOST = 200;

interface CheckCardProps {
  readonly step: CheckStep;
  /** Every line that comes in its turn: the card keeps room for the longest words of any. */
  readonly steps: readonly CheckStep[];
  /** Whether a click on a button that leads on counts. */
  readonly counts: (event: MouseEvent) => boolean;
  readonly onSay: (outcome: CheckOutcome, note: string) => void;
}

/** The line at hand. Its buttons stay the same from line to line, so that a key goes on where it was. */
export function CheckCard({ step, steps, counts, onSay }: CheckCardProps) {
  const { row, state } = step;
  const [, settings] = checkWords(step);
  const [note, setNote] = useState(step.note);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another line brings its own note
  useEffect(() => setNote(step.note), [row.id]);
  const sayer = (outcome: CheckOutcome) => (event: MouseEvent) => {
    if (counts(event)) onSay(outcome, note);
  };
  return (
    <section className="check-card" aria-label={`Check channel ${row.channel}`}>
      <h3 className="steady">
        <span>{titleOf(step)}</span>
        <Room texts={steps.map(titleOf)} />
      </h3>
      <p className="check-where">
        Box input <BoxInput input={row.input} /> {row.micClass.name}
      </p>
      <p className="steady">
        <span>{phantomOf(step, state)}</span>
        <Room texts={steps.map((each) => phantomOf(each, 'stale'))} />
      </p>
      <p className="steady">
        <span>{settings}</span>
        <Room texts={steps.map((each) => checkWords(each)[1])} />
      </p>
      <TextField
        key={row.id}
        label="Note"
        value={note}
        most={NOTE_MOST}
        mayBeEmpty
        onSet={setNote}
      />
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

const titleOf = ({ row }: CheckStep): string => `Channel ${row.channel}: ${row.name}`;

const phantomOf = (step: CheckStep, state: CheckStep['state']): string =>
  state === 'open' ? checkWords(step)[0] : `${checkWords(step)[0]} Now: ${CHECK_STATES[state]}.`;

/** Room for the longest of these texts, seen and read by nobody: what stands below them stays where it is, whichever of them is shown. */
function Room({ texts }: { readonly texts: readonly string[] }) {
  return [...new Set(texts)].map((text) => (
    <span key={text} className="room" data-text={text} aria-hidden="true" />
  ));
}
