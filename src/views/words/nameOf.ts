import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';

/** The name a person gave to a piece or mic; the id itself where nothing has it. */
export function nameOf(layout: Layout, id: Id): string {
  const named =
    layout.mics.find((mic) => mic.id === id) ?? layout.pieces.find((piece) => piece.id === id);
  return named?.name ?? id;
}

/** Names as a person lists them: `A`, `A and B`, `A, B and C`. */
export function listed(names: readonly string[]): string {
  const last = names.at(-1);
  if (last === undefined) return '';
  return names.length === 1 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** `1 mic`, `3 mics`: a count with its noun. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** The first letter as a capital, the rest as it is. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
