import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';

const LONGEST = 40;

/**
 * The next free id of a layout that starts with `stem`: the stem itself, else `stem-2`, `stem-3` and so on. The same layout
 * always gives the same id. Letters that an id cannot have become hyphens.
 */
export function freshId(layout: Layout, stem: string): Id {
  const taken = new Set(
    [
      ...[...layout.pieces, ...layout.mics, ...layout.ownClasses],
      ...[...layout.patch.channels, ...layout.patch.splits],
    ].map((thing) => thing.id),
  );
  const clean = cleanStem(stem);
  if (!taken.has(clean)) return clean;
  const bare = clean.replace(/-\d+$/, '');
  let count = 2;
  while (taken.has(numbered(bare, count))) count += 1;
  return numbered(bare, count);
}

function cleanStem(stem: string): Id {
  const clean = stem
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  return clean === '' ? 'thing' : clean;
}

function numbered(stem: string, count: number): Id {
  const end = `-${count}`;
  return `${stem.slice(0, LONGEST - end.length)}${end}`;
}
