import type { Id } from '../layout/fields.ts';

/** What is selected on the plan and in the panels. */
export type Selection =
  | { readonly kind: 'piece'; readonly id: Id }
  | { readonly kind: 'mic'; readonly id: Id }
  | { readonly kind: 'box' }
  | { readonly kind: 'deck' }
  | { readonly kind: 'player' };

export const sameSelection = (a: Selection | null, b: Selection | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.kind === b.kind &&
    ('id' in a ? a.id : '') === ('id' in b ? b.id : ''));
