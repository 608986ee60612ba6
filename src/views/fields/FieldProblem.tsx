import { useEffect, useRef } from 'react';

interface FieldProblemProps {
  readonly id?: string;
  /** What is wrong, and what was expected; empty while nothing is. */
  readonly text: string;
}

/** What is wrong with the field above. It comes into view when it appears: what is said below the fold is not said. */
export function FieldProblem({ id, text }: FieldProblemProps) {
  const line = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (text !== '') line.current?.scrollIntoView({ block: 'nearest' });
  }, [text]);
  if (text === '') return null;
  return (
    <p ref={line} className="field-problem" id={id} role="alert">
      {text}
    </p>
  );
}
