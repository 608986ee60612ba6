import { useId } from 'react';
import type { LengthUnit } from '../../../units/lengthText.ts';
import type { Measure } from '../../fields/measure.ts';

interface FormNumberProps {
  readonly label: string;
  readonly measure: Measure;
  readonly unit: LengthUnit;
  readonly text: string;
  readonly problem: string | undefined;
  readonly onType: (text: string) => void;
}

/** A number of a form that is read when the form is sent: what is wrong with it stands below it. */
export function FormNumber({ label, measure, unit, text, problem, onType }: FormNumberProps) {
  const id = useId();
  const wrong = problem !== undefined;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
        {measure.unitText(unit) !== '' && `, ${measure.unitText(unit)}`}
      </label>
      <input
        id={id}
        className="text-input"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        onFocus={(event) => event.target.select()}
        onChange={(event) => onType(event.target.value)}
        aria-invalid={wrong || undefined}
        aria-describedby={wrong ? `${id}-problem` : undefined}
      />
      {wrong && (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
