import { type CodePart, readCode, setOf } from './codes.ts';
import { unpacked } from './pack.ts';

/** The codes of one layout that have been read so far, by number. */
export interface Gathering {
  readonly set: string;
  readonly count: number;
  readonly parts: ReadonlyMap<number, Uint8Array>;
}

/** What one more code was: `new`, read `again`, of an `other` layout, or none that counts. */
export type Seen = 'new' | 'again' | 'other' | 'foreign' | 'newer' | 'damaged';

/** Takes a code in, in any order. What is not of the layout that is being gathered changes nothing. */
export function taken(
  before: Gathering | null,
  text: string,
): { readonly gathering: Gathering | null; readonly seen: Seen } {
  const code = readCode(text);
  if (typeof code === 'string') return { gathering: before, seen: code };
  if (before === null) return { gathering: withPart(code), seen: 'new' };
  const isOther = code.set !== before.set || code.count !== before.count;
  if (isOther) return { gathering: before, seen: 'other' };
  if (before.parts.has(code.number)) return { gathering: before, seen: 'again' };
  return { gathering: withPart(code, before.parts), seen: 'new' };
}

const withPart = (
  { set, count, number, bytes }: CodePart,
  parts: ReadonlyMap<number, Uint8Array> = new Map(),
): Gathering => ({ set, count, parts: new Map([...parts, [number, bytes]]) });

/** Numbers of the codes that are still to come, in order. */
export const missingOf = ({ count, parts }: Gathering): readonly number[] =>
  Array.from({ length: count }, (_, i) => i + 1).filter((number) => !parts.has(number));

/** The text of the layout once every code is there; null before, and when the whole is not what was sent. */
export function gatheredText(gathering: Gathering): string | null {
  const { set, count, parts } = gathering;
  if (parts.size < count) return null;
  const inOrder = Array.from({ length: count }, (_, i) => [...(parts.get(i + 1) ?? [])]);
  const bytes = Uint8Array.from(inOrder.flat());
  return setOf(bytes) === set ? unpacked(bytes) : null;
}
