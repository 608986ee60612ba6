import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { deleteMic, moveMicBase, moveMicTip } from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { readLayout } from '../../../src/layout/read.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { setUpSteps } from '../../../src/report/placement/steps.ts';
import { nameOf } from '../../../src/views/words/nameOf.ts';
import { stepWords } from '../../../src/views/words/setUpWords.ts';
import {
  clearancesTable,
  findingsTable,
  micsTable,
  setUpTable,
} from '../../../src/views/words/sheetTables.ts';
import { sheetWords } from '../../../src/views/words/sheetWords.ts';
import { clipInDrum } from '../../report/clipInDrum.ts';
import { startingKit } from '../../sheet/samples.ts';

const file = new URL('../../fixtures/layouts/v4-signed.json', import.meta.url);
const read = readLayout(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error('the signed layout can not be read');
const signed = read.layout;
const wordsOf = (layout: Layout) => sheetWords(layout, createAnalyst()(layout), 'A4');

describe('what the check sheet says of the sign-off', () => {
  test('nobody has signed: lines to sign on', () => {
    const { check } = wordsOf(startingKit('demo'));
    expect(check.signOffLines.join(' ')).toContain('not signed');
    expect(check.blanks).toContain('Signature');
  });

  test('it holds: who, the first digits of the digest, no lines to sign on', () => {
    const { check } = wordsOf(signed);
    const lines = check.signOffLines.join(' ');
    expect(lines).toContain('Drummer, ');
    expect(lines).toContain(signed.signOffs.at(-1)?.digest.slice(0, 12));
    expect(lines).toContain('Holds: ');
    expect(check.blanks).toEqual([]);
  });

  test('a mic was moved since: it is stale, and says so', () => {
    const stand = signed.mics.find(({ mount }) => mount.kind === 'stand');
    if (stand?.mount.kind !== 'stand') throw new Error('no mic on a stand');
    const { x, y } = stand.mount.tip;
    const { check } = wordsOf(moveMicTip(signed, stand.id, { x: x + 20, y }));
    expect(check.signOffLines.join(' ')).toContain('STALE: changed since it was signed: 1 mic.');
    expect(check.blanks).toContain('Signature');
  });

  test('refused without a word of what should change, no paper says that changes were asked for', () => {
    const signOffs = signed.signOffs.map((each) => ({ ...each, consent: false, answers: [] }));
    const { check } = wordsOf({ ...signed, signOffs });
    expect(check.signOff).toBe('Not signed off: not agreed');
    expect(check.signOffLines[0]).toContain('Not agreed to by Drummer, ');
    expect(check.signOffLines.join(' ')).not.toMatch(/asked for changes/i);
    const changed = wordsOf(deleteMic({ ...signed, signOffs }, signed.mics[0]?.id ?? '')).check;
    expect(changed.signOffLines.join(' ')).not.toMatch(/asked for changes/i);
  });

  test('without consent it is no sign-off, and one that was changed since is not called stale', () => {
    const signOffs = signed.signOffs.map((each) => ({ ...each, consent: false }));
    const refused = { ...signed, signOffs };
    const before = wordsOf(refused).check;
    expect(before.signOff).toBe('Not signed off: changes asked for');
    expect(before.signOffLines[0]).toContain('Asked for changes by Drummer, ');
    const { check } = wordsOf(deleteMic(refused, refused.mics[0]?.id ?? ''));
    expect(check.signOff).toContain('kit changed since, ask again');
    for (const said of [before, check]) {
      expect([said.signOff, ...said.signOffLines].join(' ')).not.toMatch(/stale|Sign-off:/i);
      expect(said.blanks).toContain('Signature');
    }
  });

  test('its digest is another one: it is damaged', () => {
    const signOffs = signed.signOffs.map((each) => ({ ...each, digest: '0'.repeat(64) }));
    const { check } = wordsOf({ ...signed, signOffs });
    expect(check.signOffLines.join(' ')).toContain('DAMAGED');
  });
});

describe('the tables of the sheets', () => {
  const layout = startingKit('large-kit');
  const words = wordsOf(layout);

  test('have as many cells in every row as in the header', () => {
    for (const table of [words.measures, words.mics, words.clearances]) {
      expect(table.rows.length).toBeGreaterThan(0);
      for (const row of table.rows) expect(row).toHaveLength(table.header.length);
    }
    const { header, rows } = words.setUp;
    // A stage's name is one cell, over the steps of it.
    expect(rows.filter((row) => row.length === 1).length).toBeGreaterThan(5);
    for (const row of rows.filter(({ length }) => length > 1))
      expect(row).toHaveLength(header.length);
  });

  test('give the snare its stand, its measures and the height of its head', () => {
    const row = words.measures.rows.find(([, name]) => name === 'Snare');
    expect(row?.[2]).toBe('stand');
    expect(row?.at(-1)).toBe('660');
  });

  test('tick what is done on the screen', () => {
    const done = wordsOf({ ...layout, setUp: { done: ['deck', 'piece:snare'] } });
    const ticked = done.setUp.rows.filter(([box]) => box === '[x]').map((row) => row[3]);
    expect(ticked).toEqual(['Check the deck and lay the rug', 'Snare']);
  });

  test('lose nothing that the screen says of a step: its measures stand in columns, all else in words', () => {
    const report = createAnalyst()(layout);
    const { header, rows } = words.setUp;
    const cell = (row: readonly string[], title: string): readonly string[] =>
      (row[header.indexOf(title)] ?? '').split('\n');
    const steps = setUpSteps(layout, report.runs);
    const listed = rows.filter(({ length }) => length > 1);
    expect(listed.map((row) => row[1])).toEqual(steps.map((_, i) => String(i + 1)));
    steps.forEach((step, i) => {
      const row = listed[i] ?? [];
      const { title, lines, spots } = stepWords(step, layout, report);
      expect(cell(row, 'Step')).toEqual([title]);
      for (const line of lines) {
        const measured = /(?:^|: )(\d+) mm from the left edge, (\d+) mm from the back edge$/.exec(
          line,
        );
        const checked =
          /^Check: (?:(\d+) mm from the throne mark)?(?:, )?(?:(\d+) mm from the kick mark)?$/.exec(
            line,
          );
        if (measured) {
          const at = cell(row, 'Left').map((left, k) => [left, cell(row, 'Back')[k]]);
          expect(at).toContainEqual(measured.slice(1));
        } else if (checked) {
          const at = cell(row, 'Throne').map((throne, k) => [throne, cell(row, 'Kick')[k]]);
          expect(at).toContainEqual(checked.slice(1).map((length) => length ?? ''));
        } else expect(cell(row, 'Set').join(' ')).toContain(line);
      }
      expect(cell(row, 'Point').filter((point) => point !== '')).toHaveLength(spots.length);
    });
  });
});

test('labels say name and height, then the mark with the height, then the mark', () => {
  const { forms } = wordsOf(startingKit('large-kit'));
  expect(forms.of('snare')).toEqual(['P5 Snare 660', 'P5 660', 'P5']);
  expect(forms.of('box')).toEqual(['Box']);
});

describe('what is open about a mic', () => {
  const kit = startingKit('five-piece-one-rack');
  const mic = kit.mics.find(({ mount }) => mount.kind === 'stand');
  if (mic?.mount.kind !== 'stand') throw new Error('no mic on a stand');
  const { base } = mic.mount;
  const set = (layout: Layout): readonly string[] => {
    const source = { layout, report: createAnalyst()(layout), marks: new Map() };
    const name = nameOf(layout, mic.id);
    const listed = setUpTable(source).rows.find(([, , , title]) => title?.startsWith(`${name}: `));
    const own = micsTable(source).rows.find((row) => row[2] === name);
    return [own?.[5] ?? '', listed?.at(-1) ?? ''];
  };
  const openIn = (cell: string): readonly string[] => cell.match(/OPEN: [^.]+/g) ?? [];

  const away = moveMicBase(kit, mic.id, { x: base.x, y: base.y + 900 });

  test('stands before how it is set, in the words of the set-up list', () => {
    const [own = '', listed = ''] = set(away);
    const name = nameOf(kit, mic.id);
    expect(own).toMatch(/^OPEN: .*; front of the mic \d/i);
    expect(own).toContain(`The stand of ${name} is over the deck's edge`);
    // Out of reach, over the edge, and so far out that it falls by itself.
    expect(own).toContain(`The stand of ${name} tips over`);
    expect(openIn(own)).toHaveLength(3);
    expect(openIn(own)).toEqual(openIn(listed));
  });

  test('a stand that can tip wants its sandbag on both sheets, and one that is firm on neither', () => {
    for (const cell of set(away)) expect(cell).toMatch(/counterweight or sandbag it .* can tip/i);
    for (const cell of set(kit)) expect(cell).not.toMatch(/OPEN|sandbag/i);
  });
});

test('the tables of a mic that stands in its drum say so, and never that it is clear', () => {
  const { layout, mic } = clipInDrum(startingKit('demo'));
  const source = { layout, report: createAnalyst()(layout), marks: new Map() };
  const name = nameOf(layout, mic.id);
  const clearance = clearancesTable(source).rows.find((row) => row[1] === name);
  expect(clearance?.[2]).toBe('In the way');
  expect(clearance?.[3]).toMatch(new RegExp(`^${name} goes into `));
  const own = micsTable(source).rows.find((row) => row[2] === name);
  expect(own?.[6]).toMatch(/^In the way, in .*, \d+ mm deep$/);
  expect(findingsTable(source).rows.map(([, title]) => title)).not.toContainEqual(
    expect.stringContaining(' goes into '),
  );
  expect(clearancesTable(source).rows[0]).toEqual(clearance);
  const { tally } = wordsOf(layout).check;
  expect(tally).toMatch(/^\d+ mics: 0 struck, 1 in the way, 0 tight, \d+ clear\. Margin /);
});
