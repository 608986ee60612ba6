import { memo, useId } from 'react';
import { useStable } from '../parts/useStable.ts';

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
  const choose = useStable((chosen: string) => {
    const option = options.find((one) => one.value === chosen);
    if (option) onChoose(option.value);
  });
  return (
    <fieldset className="choice">
      <legend className={hideLabel ? 'spoken' : 'field-label'}>{label}</legend>
      <div className="choice-row">
        {options.map((option) => (
          <Option
            key={option.value}
            group={group}
            value={option.value}
            text={option.text}
            checked={option.value === value}
            choose={choose}
          />
        ))}
      </div>
    </fieldset>
  );
}

interface OptionProps {
  readonly group: string;
  readonly value: string;
  readonly text: string;
  readonly checked: boolean;
  choose(value: string): void;
}

const Option = memo(function Option({ group, value, text, checked, choose }: OptionProps) {
  return (
    <label className="choice-option">
      <input type="radio" name={group} checked={checked} onChange={() => choose(value)} />
      <span>{text}</span>
    </label>
  );
});
