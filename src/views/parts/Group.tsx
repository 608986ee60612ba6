import type { ReactNode } from 'react';

interface GroupProps {
  readonly title: string;
  readonly hint?: string;
  /** Folded away until it is wanted. */
  readonly folded?: boolean;
  readonly children: ReactNode;
}

/** Fields that belong together. */
export function Group({ title, hint, folded = false, children }: GroupProps) {
  const inside = (
    <>
      {hint !== undefined && <p className="field-hint">{hint}</p>}
      <div className="field-grid">{children}</div>
    </>
  );
  if (!folded) {
    return (
      <section className="group">
        <h3>{title}</h3>
        {inside}
      </section>
    );
  }
  return (
    <details className="group">
      <summary>
        <h3>{title}</h3>
      </summary>
      {inside}
    </details>
  );
}

/** Said where directions are typed. */
export const DIRECTION_HINT =
  'Directions: 0° is the player’s right (3 o’clock), 90° the audience (12), 180° the player’s left (9), 270° the player (6).';
