import { memo, useId } from 'react';
import { useStable } from '../parts/useStable.ts';

interface SelectFieldProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly SelectOption[];
  readonly onChoose: (value: string) => void;
}

interface SelectOption {
  readonly value: string;
  readonly text: string;
}

/** One of many, by list. */
export function SelectField({ onChoose, ...props }: SelectFieldProps) {
  return <Select {...props} onChoose={useStable(onChoose)} />;
}

/** Left alone while its options say the same: in a drag they do, and a list of them is long. */
const Select = memo(function Select({ label, value, options, onChoose }: SelectFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select id={id} value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </div>
  );
}, isSameSelect);

function isSameSelect(before: SelectFieldProps, now: SelectFieldProps): boolean {
  return (
    before.label === now.label &&
    before.value === now.value &&
    before.onChoose === now.onChoose &&
    before.options.length === now.options.length &&
    before.options.every(
      ({ value, text }, i) => now.options[i]?.value === value && now.options[i]?.text === text,
    )
  );
}
