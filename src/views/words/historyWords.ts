import type { HistoryRow } from '../../session/library.ts';
import { clockWords, dayWords } from './timeWords.ts';

/** What a point that no person made anything of is called, until it is known what changed there. */
const PLAIN = 'Saved as you worked';

/** What kind of point it is: `Signed off by Jo`, `Not agreed to by Jo`, `“Sound check”`; of any other what changed there, where that is known. */
export function pointKindWords(
  { name, signed, withheld, tip }: HistoryRow,
  changed: string = PLAIN,
): string {
  const parts = [
    ...(name === '' ? [] : [`“${name}”`]),
    ...(signed === null ? [] : [`Signed off by ${signed}`]),
    ...(withheld === null ? [] : [`Not agreed to by ${withheld}`]),
    ...(tip === 'aside' ? ['From another tablet'] : []),
  ];
  return parts.length > 0 ? parts.join(', ') : changed;
}

/** A point by its moment: `2026-03-01 14:32:05`. */
export const momentWords = (at: number): string =>
  `${dayWords(at)} ${clockWords(at)}:${String(new Date(at).getSeconds()).padStart(2, '0')}`;

/** A point in a sentence: `“Sound check” of 2026-03-01 14:32:05`. */
export const pointWords = (row: HistoryRow): string =>
  row.name === ''
    ? `the point of ${momentWords(row.at)}`
    : `“${row.name}” of ${momentWords(row.at)}`;
