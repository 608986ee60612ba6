import { type KeyboardEvent, memo, useEffect, useId, useState } from 'react';
import { useStable } from '../parts/useStable.ts';
import { FieldProblem } from './FieldProblem.tsx';

/** What is said of a text that is too long; nothing of it is cut off. */
export const tooLong = (text: string, most: number): string =>
  `At most ${most} characters; this has ${text.length}.`;

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly most: number;
  /** May it be empty? Names may not. */
  readonly mayBeEmpty?: boolean;
  readonly onSet: (value: string) => void;
}

/** A line of text, taken over when the field is left or Enter is pressed; Escape brings the old text back. */
export function TextField({ onSet, ...props }: TextFieldProps) {
  return <TextLine {...props} onSet={useStable(onSet)} />;
}

/** Left alone in a drag, which is about anything but texts. */
const TextLine = memo(function TextLine(props: TextFieldProps) {
  const { label, value, most, mayBeEmpty = false, onSet } = props;
  const id = useId();
  const [draft, setDraft] = useState(value);
  const [problem, setProblem] = useState('');
  useEffect(() => setDraft(value), [value]);

  const take = () => {
    const text = draft.trim();
    if (text.length > most) {
      setProblem(`${tooLong(text, most)} Kept “${value}”.`);
      return;
    }
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
    if (event.key !== 'Escape') return;
    setDraft(value);
    setProblem('');
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
        data-dirty={draft !== value || undefined}
        onChange={(event) => {
          setDraft(event.target.value);
          const length = event.target.value.trim().length;
          setProblem(length > most ? tooLong(event.target.value.trim(), most) : '');
        }}
        onBlur={take}
        onKeyDown={onKeyDown}
        aria-describedby={problem ? `${id}-problem` : undefined}
        aria-invalid={problem !== '' || undefined}
      />
      <FieldProblem id={`${id}-problem`} text={problem} />
    </div>
  );
});
