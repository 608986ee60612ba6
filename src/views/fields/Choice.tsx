import { useId } from 'react';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly text: string }[];
  readonly onChoose: (value: Value) => void;
  /** The label is read aloud but not shown, where its place says it. */
  readonly hideLabel?: boolean;
}

/** One of a few, side by side. */
export function Choice<Value extends string>({
  label,
  value,
  options,
  onChoose,
  hideLabel = false,
}: ChoiceProps<Value>) {
  const group = useId();
  return (
    <fieldset className="choice">
      <legend className={hideLabel ? 'spoken' : 'field-label'}>{label}</legend>
      <div className="choice-row">
        {options.map((option) => (
          <label key={option.value} className="choice-option">
            <input
              type="radio"
              name={group}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.text}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
