import { type KeyboardEvent, useEffect, useId, useState } from 'react';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly most: number;
  /** May it be empty? Names may not. */
  readonly mayBeEmpty?: boolean;
  readonly onSet: (value: string) => void;
}

/** A line of text, taken over when the field is left or Enter is pressed; Escape brings the old text back. */
export function TextField({ label, value, most, mayBeEmpty = false, onSet }: TextFieldProps) {
  const id = useId();
  const [draft, setDraft] = useState(value);
  const [problem, setProblem] = useState('');
  useEffect(() => setDraft(value), [value]);

  const take = () => {
    const text = draft.trim();
    if (text === '' && !mayBeEmpty) {
      setProblem(`A name is needed: 1 to ${most} characters. Kept “${value}”.`);
      setDraft(value);
      return;
    }
    setProblem('');
    if (text !== value) onSet(text);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') setDraft(value);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="text-input"
        value={draft}
        maxLength={most}
        data-dirty={draft !== value || undefined}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={take}
        onKeyDown={onKeyDown}
        aria-describedby={problem ? `${id}-problem` : undefined}
        aria-invalid={problem !== '' || undefined}
      />
      {problem && (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
