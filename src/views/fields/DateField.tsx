import { useId } from 'react';

interface DateFieldProps {
  readonly label: string;
  /** YYYY-MM-DD, or none. */
  readonly value: string | null;
  readonly onSet: (value: string | null) => void;
}

/** A day, or none, by the browser's own picker. */
export function DateField({ label, value, onSet }: DateFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        type="date"
        className="text-input"
        value={value ?? ''}
        onChange={(event) => onSet(event.target.value === '' ? null : event.target.value)}
      />
    </div>
  );
}
