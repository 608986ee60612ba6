import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip, deleteMic, renameMic, setInput } from '../../src/layout/edit/mics.ts';
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

test('a run that is gone, and one that came, is told by the name it had or has; a renamed mic by its new one', () => {
  const named = (layout: Layout, id: string) => layout.mics.find((mic) => mic.id === id)?.name;
  const other = deleteMic(
    renameMic(setInput(kit, 'mic-snare', null), 'mic-snare', 'Side'),
    'mic-rack-1',
  );
  const [there, back] = [compare(kit, other).runs, compare(other, kit).runs];
  const change = (runs: typeof there, id: string) => runs.find(({ mic }) => mic === id);
  const name = named(kit, 'mic-rack-1');
  expect(name).not.toBe('mic-rack-1');
  expect(change(there, 'mic-rack-1')).toMatchObject({ name, after: null, stockAfter: null });
  expect(change(back, 'mic-rack-1')).toMatchObject({ name, before: null, stockBefore: null });
  const moved = moveBox(other, { x: kit.box.x + 6000, y: kit.box.y });
  for (const { mic, name: told } of compare(kit, moved).runs) {
    expect(told).toBe(named(moved, mic) ?? named(kit, mic));
  }
  expect(change(compare(kit, moved).runs, 'mic-snare')?.name).toBe('Side');
});

test('a cable is told when its length or what serves it changed, and what served it of old is short of the new way', () => {
  const short = [2, 3, 4].reduce(
    (layout, metres) => setStock(layout, metres * 1000, 5),
    kit.cabling.stock.reduce((layout, { length }) => setStock(layout, length, 0), kit),
  );
  const few = setStock(short, 4000, 0);
  const layouts = [kit, short, few, deleteMic(few, 'mic-snare'), moveBox(kit, { x: 900, y: 300 })];
  const served = ({ report }: ReturnType<typeof analysed>, id: string) => {
    const run = report.runs.find(({ mic }) => mic === id);
    const lengths = run?.carried ?? [];
    const [one = null, other = 0] = lengths;
    const stock = one === null ? null : one + other;
    return { total: run?.total ?? null, stock };
  };
  const all = layouts.map(analysed);
  expect(all.some(({ report }) => report.runs.some(({ carried }) => carried.length === 2))).toBe(
    true,
  );
  expect(all.some(({ report }) => report.runs.some(({ carried }) => carried.length === 0))).toBe(
    true,
  );
  for (const before of all) {
    for (const after of all) {
      const { runs } = compareLayouts(before, after);
      for (const { id } of kit.mics) {
        const [was, is] = [served(before, id), served(after, id)];
        const told = runs.find(({ mic }) => mic === id);
        const differs =
          Math.abs((was.total ?? -1e6) - (is.total ?? -1e6)) >= 0.5 || was.stock !== is.stock;
        expect(told !== undefined, id).toBe(differs);
        if (!told) continue;
        const reaches = was.stock === null || is.total === null || was.stock >= is.total;
        expect(told).toMatchObject({
          before: was.total,
          after: is.total,
          stockBefore: was.stock,
          stockAfter: is.stock,
          tooShort: !reaches,
        });
      }
    }
  }
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
