import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { moveMicBase } from '../../src/layout/edit/mics.ts';
import { setDeck } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { readLayout } from '../../src/layout/read.ts';
import { setUpSteps } from '../../src/report/placement/steps.ts';
import type { Page, TextMark } from '../../src/sheet/mark.ts';
import { bodyRoom } from '../../src/sheet/paper/frame.ts';
import { PAPER_MARGIN, paperExtent } from '../../src/sheet/paper/paper.ts';
import { overlaps } from '../../src/sheet/paper/placeLabels.ts';
import { roomOf } from '../../src/sheet/paper/text.ts';
import { stageWords } from '../../src/views/words/setUpWords.ts';
import { sheetMarks } from '../../src/views/words/sheetMarks.ts';
import { PAPERS, sheetsOf, startingKit } from './samples.ts';

const stored = (name: string): Layout => {
  const file = new URL(`../fixtures/layouts/${name}.json`, import.meta.url);
  const read = readLayout(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(`${name} can't be read`);
  return read.layout;
};

/** A layout whose every text is as long as it may be. */
const longWinded = (): Layout => {
  const layout = startingKit('five-piece-one-rack');
  const long = 'Wide Words Without Mercy '.repeat(4).slice(0, 80);
  return {
    ...layout,
    name: long,
    venue: { ...layout.venue, name: long, date: '2026-11-28' },
    player: { ...layout.player, name: long },
    pieces: layout.pieces.map((piece) => ({ ...piece, name: long })),
    mics: layout.mics.map((mic) => ({ ...mic, name: long })),
  };
};

/** A layout with much open about its mics: every stand is out of reach or over the edge of a small deck, and some can tip. */
const muchOpen = (): Layout => {
  const layout = startingKit('large-kit');
  const away = layout.mics.reduce(
    (moved, { id, mount }) =>
      mount.kind === 'stand'
        ? moveMicBase(moved, id, { x: mount.base.x, y: mount.base.y + 900 })
        : moved,
    layout,
  );
  return setDeck(away, { width: 1800, depth: 1500 });
};

const layouts: readonly (readonly [string, Layout])[] = [
  ...STARTING_KITS.map(({ key, make }) => [key, make('sample')] as const),
  ['in inches', { ...startingKit('large-kit'), units: 'in' }],
  ['every mount', stored('v1-every-mount')],
  ['signed', stored('v4-signed')],
  ['long names', longWinded()],
  ['much open', muchOpen()],
];

const texts = (page: Page): readonly TextMark[] =>
  page.marks.filter((mark): mark is TextMark => mark.kind === 'text');

describe.each(layouts)('the sheets of %s', (_, layout) => {
  const all = PAPERS.flatMap((paper) =>
    (['house', 'player'] as const).map((seenFrom) => ({
      paper,
      sheets: sheetsOf(layout, paper, seenFrom),
    })),
  );

  test('have letters of at least 2.8 mm on their plan and elevations, but where names are without mercy', () => {
    if (layout.mics.some(({ name }) => name.length > 40)) return;
    for (const { sheets } of all) {
      for (const drawn of ['placement', 'elevations']) {
        const labels = sheets
          .filter(({ name }) => name === drawn)
          .flatMap(({ pages }) => pages)
          .flatMap(texts)
          .filter(({ layer }) => layer === 'LABELS');
        expect(labels.length).toBeGreaterThanOrEqual(layout.mics.length);
        for (const { size } of labels) expect(size, drawn).toBeGreaterThanOrEqual(2.8);
      }
    }
  });

  test('tell only of signs that a drawing has: crosses and cables on the plan alone', () => {
    for (const { sheets } of all) {
      for (const [drawn, hasBoth] of [
        ['placement', true],
        ['elevations', false],
      ] as const) {
        const pages = sheets.filter(({ name }) => name === drawn).flatMap((sheet) => sheet.pages);
        const said = pages
          .flatMap(texts)
          .map(({ text }) => text)
          .join(' ');
        expect(said).toContain('dark body is a mic');
        expect(said.includes('- - cable'), drawn).toBe(hasBoth);
        expect(said.includes('+ middle'), drawn).toBe(hasBoth);
      }
    }
  });

  test('have letters of at least 2.8 mm in every table', () => {
    for (const { paper, sheets } of all) {
      const body = bodyRoom(paper);
      const inBody = sheets
        .flatMap(({ pages }) => pages.flatMap(texts))
        .filter(({ layer, at }) => layer === 'FRAME' && at.y > body.y)
        .filter(({ at }) => at.y < body.y + body.height - 12);
      expect(inBody.length).toBeGreaterThan(20);
      for (const { size, text } of inBody) expect(size, text).toBeGreaterThanOrEqual(2.8);
    }
  });

  test('have every mark on the paper, and every text inside its margins', () => {
    for (const { paper, sheets } of all) {
      const { width, height } = paperExtent(paper);
      for (const page of sheets.flatMap(({ pages }) => pages)) {
        expect([page.width, page.height]).toEqual([width, height]);
        const outside = page.marks
          .flatMap((m) => (m.kind === 'line' ? m.points : m.kind === 'circle' ? [m.centre] : []))
          .filter(
            ({ x, y }) =>
              x < PAPER_MARGIN - 0.01 ||
              x > width - PAPER_MARGIN + 0.01 ||
              y < PAPER_MARGIN - 0.01 ||
              y > height - PAPER_MARGIN + 0.01,
          );
        expect(outside).toEqual([]);
        for (const text of texts(page)) {
          const room = roomOf(text);
          const inside =
            room.x >= PAPER_MARGIN - 0.05 &&
            room.x + room.width <= width - PAPER_MARGIN + 0.05 &&
            room.y >= PAPER_MARGIN - 0.7 &&
            room.y + room.height <= height - PAPER_MARGIN + 0.7;
          expect(inside, text.text).toBe(true);
        }
      }
    }
  });

  test('have no text over another', () => {
    for (const { sheets } of all) {
      for (const page of sheets.flatMap(({ pages }) => pages)) {
        const rooms = texts(page).map((text) => ({ text: text.text, room: roomOf(text) }));
        rooms.forEach((a, i) => {
          const over = rooms.slice(i + 1).find((b) => overlaps(a.room, b.room));
          expect(over && `${a.text} / ${over.text}`).toBeUndefined();
        });
      }
    }
  });
});

describe.each(STARTING_KITS.map(({ key }) => key))('the sheets of the starting kit %s', (key) => {
  const layout = startingKit(key);

  test('are one page each, but for the set-up list; on standing Letter the table of a large kit has a page of its own', () => {
    for (const paper of PAPERS) {
      const sheets = sheetsOf(layout, paper).filter(({ name }) => name !== 'setUp');
      const isNarrow = paper.size === 'letter' && paper.orientation === 'portrait';
      const ofPlan = key === 'large-kit' && isNarrow ? 2 : 1;
      expect(sheets.map(({ pages }) => pages.length)).toEqual([ofPlan, 1, 1, 1]);
    }
  });

  test('have a plan of 1:30 or larger on every paper', () => {
    for (const paper of PAPERS) {
      const [placement] = sheetsOf(layout, paper);
      const said = (placement?.pages ?? []).flatMap(texts).map(({ text }) => text);
      const scale = Number(said.map((text) => /^1:(\d+) on/.exec(text)?.[1]).find(Boolean));
      expect(scale).toBeLessThanOrEqual(30);
    }
  });

  test('have numbers of at least 2.6 mm at the rulers of the plan on lying A4', () => {
    const [placement] = sheetsOf(layout, { size: 'a4', orientation: 'landscape' });
    const all = (placement?.pages ?? []).flatMap(texts);
    const numbers = all.filter(({ layer, text }) => layer === 'DIMENSIONS' && /^\d/.test(text));
    expect(numbers.length).toBeGreaterThan(10);
    for (const { size } of numbers) expect(size).toBeGreaterThanOrEqual(2.6);
  });

  test('name everything on the plan', () => {
    for (const paper of PAPERS) {
      const [placement] = sheetsOf(layout, paper);
      const words = (placement?.pages ?? [])
        .flatMap(texts)
        .filter(({ layer }) => layer === 'LABELS')
        .map(({ text }) => text.split(' ')[0]);
      for (const mark of sheetMarks(layout).values()) expect(words).toContain(mark);
    }
  });
});

test('the set-up list is never set in less than 9 points, and goes on, on the next page', () => {
  // A point is 25.4 / 72 mm.
  const least = (9 * 25.4) / 72;
  for (const paper of PAPERS) {
    const setUp = sheetsOf(startingKit('large-kit'), paper).find(({ name }) => name === 'setUp');
    const pages = setUp?.pages ?? [];
    expect(pages.length).toBeGreaterThan(1);
    const body = bodyRoom(paper);
    const inTable = pages
      .flatMap(texts)
      .filter(({ at }) => at.y > body.y && at.y < body.y + body.height);
    expect(inTable.length).toBeGreaterThan(50);
    expect(Math.min(...inTable.map(({ size }) => size))).toBeGreaterThanOrEqual(least);
  }
});

test('every page of the set-up list says which stage its first step is of', () => {
  const stages = new Set(setUpSteps(startingKit('large-kit'), []).map(({ stage }) => stage));
  const headings = new Set([...stages].map(stageWords));
  for (const paper of PAPERS) {
    const setUp = sheetsOf(startingKit('large-kit'), paper).find(({ name }) => name === 'setUp');
    const pages = setUp?.pages ?? [];
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      const all = texts(page);
      const box = Math.min(...all.filter(({ text }) => text === '[ ]').map(({ at }) => at.y));
      const over = all.filter(({ text, at }) => headings.has(text) && at.y < box);
      expect(over).toHaveLength(1);
    }
  }
});

test('no sheet names another by a name that it does not have', () => {
  const [paper] = PAPERS;
  const titles = ['Placement', 'Elevations', 'Stands and mics', 'Clearances and sign-off'];
  const layout = { ...startingKit('demo'), margin: 300 };
  const all = paper ? sheetsOf(layout, paper).flatMap(({ pages }) => pages.flatMap(texts)) : [];
  const sentences = all.map(({ text }) => text).join(' ');
  const named = [...sentences.matchAll(/sheet “([^”]+)”/g)].map(([, title]) => title);
  expect(named.length).toBeGreaterThan(0);
  for (const title of named) expect(titles).toContain(title);
});

test('the same layout makes the same sheets', () => {
  const [paper = { size: 'a4', orientation: 'landscape' } as const] = PAPERS;
  const layout = startingKit('demo');
  expect(sheetsOf(layout, paper)).toEqual(sheetsOf(layout, paper));
});
