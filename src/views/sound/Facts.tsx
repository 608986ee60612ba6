import type { ReactNode } from 'react';

interface FactsProps {
  readonly facts: readonly (readonly [what: string, amount: ReactNode])[];
}

/** Figures with what they are, side by side. */
export function Facts({ facts }: FactsProps) {
  return (
    <dl className="sound-facts">
      {facts.map(([what, amount]) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>{amount}</dd>
        </div>
      ))}
    </dl>
  );
}
