import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';

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

/** Whether what is selected is in the layout: an undo may take it away. */
export function isThere(
  selection: Selection,
  { pieces, mics }: Pick<Layout, 'pieces' | 'mics'>,
): boolean {
  if (!('id' in selection)) return true;
  const things: readonly { readonly id: Id }[] = selection.kind === 'piece' ? pieces : mics;
  return things.some(({ id }) => id === selection.id);
}
