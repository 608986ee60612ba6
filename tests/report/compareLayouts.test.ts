import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip, setInput } from '../../src/layout/edit/mics.ts';
import { moveBox, setDeck, setStock, setVenue } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { compareLayouts } from '../../src/report/compareLayouts.ts';

const kit = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') as Layout;
const analysed = (layout: Layout) => ({ layout, report: createAnalyst()(layout) });
const compare = (before: Layout, after: Layout) =>
  compareLayouts(analysed(before), analysed(after));

test('a layout does not differ from itself', () => {
  const same = compare(kit, structuredClone(kit));
  expect(same).toMatchObject({ gained: [], lost: [], runs: [], stage: [] });
  expect(same.missing.after).toEqual(same.missing.before);
});

test('what one way is gained, is lost the other way', () => {
  const other = setInput(
    changeClip(kit, 'mic-rack-1', { angle: 270, reach: 60 }),
    'mic-snare',
    null,
  );
  const there = compare(kit, other);
  const back = compare(other, kit);
  expect(there.gained.map(({ key }) => key)).toContain('mic-struck:mic-rack-1');
  expect(there.gained.map(({ key }) => key)).toContain('run-unplugged:mic-snare:');
  expect(back.lost).toEqual(there.gained);
  expect(back.gained).toEqual(there.lost);
});

test('a smaller deck: what stands over its edge, and the deck itself', () => {
  const { gained, stage, kit: changes } = compare(kit, setDeck(kit, { width: 1500 }));
  expect(gained.some(({ code }) => code === 'piece-off-deck')).toBe(true);
  expect(stage).toEqual([{ path: 'deck.width', before: kit.deck.width, after: 1500 }]);
  expect(changes).toEqual({ player: [], pieces: [], mics: [] });
});

test('another place of the box: longer runs, too short for the cables they had', () => {
  const far = moveBox(kit, { x: kit.box.x + 6000, y: kit.box.y });
  const { runs } = compare(kit, far);
  expect(runs).toHaveLength(kit.mics.length);
  for (const { before, after, stockBefore, tooShort } of runs) {
    expect((after ?? 0) - (before ?? 0)).toBeGreaterThan(1000);
    expect(tooShort).toBe((stockBefore ?? Number.POSITIVE_INFINITY) < (after ?? 0));
  }
  expect(runs.some(({ tooShort }) => tooShort)).toBe(true);
});

test('less stock: what is missing, counted', () => {
  const empty = kit.cabling.stock.reduce((layout, { length }) => setStock(layout, length, 0), kit);
  const { missing } = compare(kit, setStock(empty, 10_000, 1));
  expect(missing.before).toEqual([]);
  const count = missing.after.reduce((sum, row) => sum + row.count, 0);
  expect(count).toBe(kit.mics.length - 1);
});

test('other air is told as a change of the venue', () => {
  const { stage } = compare(kit, setVenue(kit, { temperature: 5 }));
  expect(stage).toEqual([{ path: 'venue.temperature', before: kit.venue.temperature, after: 5 }]);
});
