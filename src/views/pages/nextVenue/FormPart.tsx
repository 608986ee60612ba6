import { type ReactNode, useId } from 'react';
import { tooLong } from '../../fields/TextField.tsx';
import { MOST_NAME } from './venueForm.ts';

/** Fields that belong together. */
export function FormPart({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ReactNode;
}) {
  return (
    <section className="venue-part">
      <h2>{title}</h2>
      <div className="venue-fields">{children}</div>
    </section>
  );
}

interface TextProps {
  readonly label: string;
  readonly value: string;
  readonly problem?: string | undefined;
  readonly onType: (text: string) => void;
}

/** A name of the form; one that is too long is said to be that while it is typed. */
export function FormText({ label, value, problem: refused, onType }: TextProps) {
  const id = useId();
  const { length } = value.trim();
  const problem = length > MOST_NAME ? tooLong(value.trim(), MOST_NAME) : refused;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="text-input"
        value={value}
        onChange={(event) => onType(event.target.value)}
        aria-invalid={problem !== undefined || undefined}
        aria-describedby={problem === undefined ? undefined : `${id}-problem`}
      />
      {problem !== undefined && (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
