import { describe, expect, it } from 'vitest';
import type { LibraryRow } from '../../../src/session/library.ts';
import { searchOver } from '../../../src/views/library/searchLayouts.ts';

const row = (id: string, rest: Partial<LibraryRow>): LibraryRow => ({
  ...{ id, name: 'Layout', venue: '', date: null, player: '', pieces: 1, mics: 0, picture: '' },
  ...{ signOff: 'none', changedAt: 0, otherLines: 0, favourite: false, archived: false, tags: [] },
  ...rest,
});

const plainId = (name: string): string => name.toLowerCase().replace(' ', '-');

const rows = [
  row('club', { name: 'Small club', venue: 'Cellar', player: 'First Drummer', date: '2026-07-11' }),
  row('hall', { name: 'Town hall', venue: 'Été hall', date: '2026-12-05', tags: ['tour'] }),
  row('field', { name: 'Open air', venue: 'Field by the club', player: 'Second Drummer' }),
];

describe('searchOver', () => {
  const search = searchOver(rows);

  it.each([
    ['club', ['club', 'field']],
    ['CLU', ['club', 'field']],
    ['drummer', ['club', 'field']],
    ['second drummer', ['field']],
    ['2026-07', ['club']],
    ['december', ['hall']],
    ['dec 2026', ['hall']],
    ['tour', ['hall']],
    ['ete', ['hall']],
    ['Été', ['hall']],
    ['cellra', []],
    ['cellat', ['club']],
    ['club tour', []],
    ['nothing', []],
    ['ubs', []],
    ['lub', ['club', 'field']],
    ['rummer', ['club', 'field']],
    ['ell', ['club']],
    ['own all', ['hall']],
    ['ub', []],
    ['ÉT', ['hall']],
    ['', []],
    ['<script> AND * ', []],
  ])('%s finds %j', (text, ids) => {
    expect(search(text)).toEqual(ids);
  });

  it('finds every name by any three letters of it, what begins a word first', () => {
    const names = ['Drumhouse', 'Warehouse', 'House party'];
    const over = searchOver(names.map((name) => row(plainId(name), { name })));
    for (const name of names) {
      for (let at = 0; at + 3 <= name.length; at += 1) {
        const part = name.slice(at, at + 3);
        if (!part.includes(' ')) expect(over(part), part).toContain(plainId(name));
      }
    }
    expect(over('house')[0]).toBe('house-party');
    expect(over('house')).toHaveLength(3);
  });

  it('a name counts more than a venue', () => {
    expect(search('club')[0]).toBe('club');
  });

  it('finds every one of a thousand by its own name', () => {
    const many = Array.from({ length: 1000 }, (_, index) =>
      row(`l${index}`, { name: `Gig ${index}x` }),
    );
    const over = searchOver(many);
    for (const { id, name } of many) expect(over(name)).toEqual([id]);
  });
});
