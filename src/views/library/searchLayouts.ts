import MiniSearch from 'minisearch';
import type { Id } from '../../layout/fields.ts';
import type { LibraryRow } from '../../session/library.ts';

/** Answers with the ids of the layouts that a text finds, the best first. */
export type LayoutSearch = (text: string) => readonly Id[];

const MONTHS =
  'january february march april may june july august september october november december'.split(
    ' ',
  );

/**
 * A search over the list: every word must begin a word of the name, the venue, the player, a tag or the date (2026-07-11, July);
 * of longer words a letter may be wrong.
 */
export function searchOver(rows: readonly LibraryRow[]): LayoutSearch {
  const index = new MiniSearch<LibraryRow>({
    fields: ['name', 'venue', 'player', 'tags', 'date'],
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
  return (text) => index.search(text).map(({ id }) => String(id));
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
