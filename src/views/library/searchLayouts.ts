import MiniSearch from 'minisearch';
import type { Id } from '../../layout/fields.ts';
import type { LibraryRow } from '../../session/library.ts';

/** Answers with the ids of the layouts that a text finds, the best first. */
export type LayoutSearch = (text: string) => readonly Id[];

const FIELDS = ['name', 'venue', 'player', 'tags', 'date'] as const;

const MONTHS =
  'january february march april may june july august september october november december'.split(
    ' ',
  );

/** What is looked for inside words too: three letters or more. Shorter ones are in nearly every word, and 10 is no 110. */
const INSIDE = /^\p{L}.{2}/u;
const stands = (word: string, text: string): boolean =>
  INSIDE.test(word) ? text.includes(word) : ` ${text}`.includes(` ${word}`);

/**
 * A search over the list: every word must stand in the name, the venue, the player, a tag or the date (2026-07-11, July), at the
 * beginning of a word or, from three letters on, inside one; of longer words a letter may be wrong. What begins a word comes first.
 */
export function searchOver(rows: readonly LibraryRow[]): LayoutSearch {
  const texts = rows.map((row) => ({
    id: row.id,
    text: plain(FIELDS.map((field) => textOf(row, field)).join(' ')),
  }));
  const index = new MiniSearch<LibraryRow>({
    fields: [...FIELDS],
    extractField: (row, field) => (field === 'id' ? row.id : textOf(row, field)),
    processTerm: plain,
    searchOptions: {
      boost: { name: 3, tags: 2 },
      combineWith: 'AND',
      prefix: true,
      fuzzy: (term) => (term.length > 4 ? 1 : false),
    },
  });
  index.addAll(rows);
  return (text) => {
    const found = index.search(text).map(({ id }) => String(id));
    const words = plain(text)
      .split(/\s+/)
      .filter((word) => word !== '');
    if (words.length === 0) return found;
    const inside = texts.filter((one) => words.every((word) => stands(word, one.text)));
    return [...new Set([...found, ...inside.map(({ id }) => id)])];
  };
}

function textOf({ name, venue, player, tags, date }: LibraryRow, field: string): string {
  if (field === 'name') return name;
  if (field === 'venue') return venue;
  if (field === 'player') return player;
  if (field === 'tags') return tags.join(' ');
  const month = MONTHS[Number(date?.slice(5, 7)) - 1] ?? '';
  return date === null ? '' : `${date} ${month}`;
}

/** Without capitals and accents: `Été` is found as `ete`. */
const plain = (term: string): string => term.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
