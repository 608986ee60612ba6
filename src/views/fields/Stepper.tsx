import { type KeyboardEvent, memo, type RefObject, useId, useLayoutEffect, useRef } from 'react';
import type { LengthUnit } from '../../units/lengthText.ts';
import { useStable } from '../parts/useStable.ts';
import { FieldProblem } from './FieldProblem.tsx';
import { HoldButton } from './HoldButton.tsx';
import type { Measure } from './measure.ts';
import type { Hold } from './useHold.ts';

/** What a stepper shows and does. */
export interface StepperEntry {
  readonly unit: LengthUnit;
  readonly shown: string;
  /** What is being typed; null while nothing is. */
  readonly draft: string | null;
  readonly problem: string;
  /** How what was typed was rounded; empty while it was not. */
  readonly rounded: string;
  readonly setDraft: (text: string) => void;
  readonly take: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly holding: (sign: 1 | -1) => Hold;
}

interface StepperProps {
  readonly label: string;
  readonly measure: Measure;
  /** What the number means, said below it. */
  readonly note?: string | undefined;
  readonly entry: StepperEntry;
}

/** A number with its unit between − and +, and the message of what could not be read. */
export function Stepper({ label, measure, note, entry }: StepperProps) {
  const id = useId();
  const { unit, shown, draft, problem, rounded } = entry;
  const setDraft = useStable(entry.setDraft);
  const take = useStable(entry.take);
  const onKeyDown = useStable(entry.onKeyDown);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <div className="stepper">
        <HoldButton label={`${label}, less`} icon="minus" hold={entry.holding(-1)} />
        <span className="stepper-value">
          <NumberInput
            id={id}
            value={draft ?? shown}
            isDirty={draft !== null && draft !== shown}
            hasNote={note !== undefined}
            hasProblem={problem !== ''}
            setDraft={setDraft}
            take={take}
            onKeyDown={onKeyDown}
          />
          <span className="stepper-unit" aria-hidden="true">
            {measure.unitText(unit)}
          </span>
          <span className="spoken" id={`${id}-unit`}>
            {measure.unitSpoken(unit)}
          </span>
        </span>
        <HoldButton label={`${label}, more`} icon="plus" hold={entry.holding(1)} />
      </div>
      {note !== undefined && (
        <p className="field-hint" id={`${id}-note`}>
          {note}
        </p>
      )}
      {rounded !== '' && (
        <p className="field-hint" role="status">
          {rounded}
        </p>
      )}
      <FieldProblem id={`${id}-problem`} text={problem} />
    </div>
  );
}

interface NumberInputProps extends Pick<StepperEntry, 'setDraft' | 'take' | 'onKeyDown'> {
  readonly id: string;
  readonly value: string;
  readonly isDirty: boolean;
  readonly hasNote: boolean;
  readonly hasProblem: boolean;
}

/**
 * Its text is set past React, which would set type, name and value of an input that it renders, and have the browser find its style anew: in a drag
 * numbers change in every second frame.
 */
function NumberInput({ value, ...props }: NumberInputProps) {
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    if (input.current && input.current.value !== value) input.current.value = value;
  }, [value]);
  return <BareInput {...props} input={input} isLong={value.length > 5} />;
}

interface BareInputProps extends Omit<NumberInputProps, 'value'> {
  readonly input: RefObject<HTMLInputElement | null>;
  readonly isLong: boolean;
}

const BareInput = memo(function BareInput({ id, input, isLong, ...props }: BareInputProps) {
  const { isDirty, hasNote, hasProblem, setDraft, take, onKeyDown } = props;
  return (
    <input
      ref={input}
      id={id}
      className="number-input"
      autoComplete="off"
      data-dirty={isDirty || undefined}
      data-long={isLong || undefined}
      onFocus={(event) => event.target.select()}
      onChange={(event) => setDraft(event.target.value)}
      onBlur={take}
      onKeyDown={onKeyDown}
      aria-describedby={[
        `${id}-unit`,
        ...(hasNote ? [`${id}-note`] : []),
        ...(hasProblem ? [`${id}-problem`] : []),
      ].join(' ')}
      aria-invalid={hasProblem || undefined}
    />
  );
});
