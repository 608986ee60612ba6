import { type ReactNode, useId } from 'react';

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

/** A line of text of the form. */
export function FormText({ label, value, problem, onType }: TextProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="text-input"
        value={value}
        maxLength={80}
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
