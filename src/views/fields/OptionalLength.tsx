import { type KeyboardEvent, useId, useState } from 'react';
import { useSession } from '../../session/session.ts';
import { FieldProblem } from './FieldProblem.tsx';
import { LENGTH } from './measure.ts';
import { type Limits, readField, roundedWords } from './reading.ts';

interface OptionalLengthProps {
  readonly label: string;
  /** The length that holds while the field is empty, and where it comes from: `stature`. */
  readonly otherwise: number;
  readonly from: string;
  readonly value: number | undefined;
  readonly limits: Limits;
  readonly onSet: (value: number | undefined) => void;
}

/** A length that may be left out: an empty field gives it back to what it comes from otherwise. */
export function OptionalLength({
  label,
  otherwise,
  from,
  value,
  limits,
  onSet,
}: OptionalLengthProps) {
  const id = useId();
  const unit = useSession((state) => state.open?.layout.units ?? 'mm');
  const shown = value === undefined ? '' : `${LENGTH.show(value, unit)} ${unit}`;
  const derived = `${LENGTH.show(otherwise, unit)} ${unit}`;
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const [rounded, setRounded] = useState('');
  const take = () => {
    setDraft(null);
    setProblem('');
    setRounded('');
    if (draft === null || draft === shown) return;
    if (draft.trim() === '') return onSet(undefined);
    const reading = readField(draft, LENGTH, limits, unit);
    if (reading.ok) {
      onSet(reading.value);
      setRounded(roundedWords(reading));
    } else
      setProblem(`${reading.message} Kept ${shown === '' ? `the value from ${from}` : shown}.`);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') setDraft(null);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="text-input"
        autoComplete="off"
        placeholder={derived}
        value={draft ?? shown}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={take}
        onKeyDown={onKeyDown}
        aria-invalid={problem !== '' || undefined}
        aria-describedby={problem ? `${id}-from ${id}-problem` : `${id}-from`}
      />
      <p className="field-hint" id={`${id}-from`}>
        From {from}: {derived}
      </p>
      {rounded !== '' && (
        <p className="field-hint" role="status">
          {rounded}
        </p>
      )}
      <FieldProblem id={`${id}-problem`} text={problem} />
    </div>
  );
}
