import { useId } from 'react';
import { HoldButton } from './HoldButton.tsx';
import { type NumberEntry, useNumberEntry } from './useNumberEntry.ts';

export interface NumberFieldProps extends NumberEntry {
  readonly label: string;
}

/** A number that can be typed with its unit, or stepped with − and +. */
export function NumberField({ label, ...entry }: NumberFieldProps) {
  const id = useId();
  const field = useNumberEntry(entry);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <div className="stepper">
        <HoldButton label={`${label}, less`} icon="minus" hold={field.holding(-1)} />
        <span className="stepper-value">
          <input
            id={id}
            className="number-input"
            autoComplete="off"
            value={field.draft ?? field.shown}
            data-dirty={(field.draft !== null && field.draft !== field.shown) || undefined}
            onFocus={(event) => event.target.select()}
            onChange={(event) => field.setDraft(event.target.value)}
            onBlur={field.take}
            onKeyDown={field.onKeyDown}
            aria-describedby={field.problem ? `${id}-unit ${id}-problem` : `${id}-unit`}
            aria-invalid={field.problem !== '' || undefined}
          />
          <span className="stepper-unit" aria-hidden="true">
            {entry.measure.unitText(field.unit)}
          </span>
          <span className="spoken" id={`${id}-unit`}>
            {entry.measure.unitSpoken(field.unit)}
          </span>
        </span>
        <HoldButton label={`${label}, more`} icon="plus" hold={field.holding(1)} />
      </div>
      {field.problem && (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {field.problem}
        </p>
      )}
    </div>
  );
}
