import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { micName } from '../../layout/mics/micName.ts';

/**
 * What a piece or mic is called in a sentence: the name a person gave it, a mic of a piece's name as `Snare mic`; the id
 * itself where nothing has it.
 */
export function nameOf(layout: Layout, id: Id): string {
  const mic = layout.mics.find((each) => each.id === id);
  if (mic) return micName(mic, layout.pieces);
  return layout.pieces.find((piece) => piece.id === id)?.name ?? id;
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

/** A name in the middle of a sentence: `snare`; a short name such as `T1` stays as it is. */
export const inSentence = (name: string): string =>
  /^\p{Lu}[\p{Ll}-]/u.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;

/** A number and its unit stay on one line. */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (mm|m|in|ft|dB|Hz|kHz)\b/g, '$1\u00a0$2');

/** The first letter as a capital, the rest as it is. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
