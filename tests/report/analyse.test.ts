import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeMic } from '../../src/layout/edit/change.ts';
import { changeClip, moveMicTip, setInput, setStandClass } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { moveBox, setMargin, setPlayer } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';

const kit = (key: string): Layout => {
  const start = STARTING_KITS.find((one) => one.key === key);
  if (!start) throw new Error(`no starting kit ${key}`);
  return start.make('kit');
};
const fresh = (layout: Layout) => createAnalyst()(layout);
const codes = (layout: Layout): readonly string[] => fresh(layout).findings.map(({ code }) => code);

describe('an analysis', () => {
  test.each(STARTING_KITS.map(({ key }) => key))('%s opens without a finding', (key) => {
    expect(codes(kit(key))).toEqual([]);
  });

  test('gives one clearance and one run for every mic, in their order', () => {
    const layout = kit('large-kit');
    const report = fresh(layout);
    const ids = layout.mics.map(({ id }) => id);
    expect(report.clearances.map(({ mic }) => mic)).toEqual(ids);
    expect(report.runs.map(({ mic }) => mic)).toEqual(ids);
    expect(report.totals.cable).toBeCloseTo(
      report.runs.reduce((sum, { total }) => sum + total, 0),
      6,
    );
  });

  test('with a memory is the same as without, after every edit', () => {
    const edits: readonly ((layout: Layout) => Layout)[] = [
      (l) => changeClip(l, 'mic-rack-1', { angle: 250 }),
      (l) => movePiece(l, 'rack-1', { x: -100, y: 640 }),
      (l) => setPlayer(l, { seatHeight: 560 }),
      (l) => moveBox(l, { x: 900, y: 300 }),
      (l) => setMargin(l, 90),
      (l) => setInput(l, 'mic-snare', null),
      (l) => changeMic(l, 'mic-rack-2', (mic) => ({ ...mic, name: 'Renamed' })),
      (l) => ({ ...l, mics: l.mics.filter(({ id }) => id !== 'mic-rack-1') }),
      (l) => ({ ...l, mics: l.mics.toReversed(), pieces: l.pieces.toReversed() }),
      (l) => movePiece(l, 'crash-2', { x: 400, y: 2600 }),
      (l) => changeMic(l, 'mic-snare', (mic) => ({ ...mic, hears: ['crash-2'] })),
      (l) => ({ ...l, deck: { ...l.deck, width: 2500 } }),
    ];
    const analyst = createAnalyst();
    let layout = kit('five-piece-two-racks');
    analyst(layout);
    for (const edit of edits) {
      layout = edit(layout);
      expect(analyst(layout)).toEqual(fresh(layout));
    }
  });

  test('in a hurry is as ever but for the loom, and is forgotten at rest', () => {
    const analyst = createAnalyst();
    const layout = kit('large-kit');
    analyst(layout);
    const moved = moveBox(layout, { x: layout.box.x - 300, y: layout.box.y + 100 });
    const hurried = analyst(moved, true);
    const rested = analyst(moved);
    expect(rested).toEqual(fresh(moved));
    expect(hurried.clearances).toEqual(rested.clearances);
    expect(hurried.runs.map(({ shortest }) => shortest)).toEqual(
      rested.runs.map(({ shortest }) => shortest),
    );
    for (const { total, shortest, parts } of hurried.runs) {
      expect(total).toBeGreaterThanOrEqual(shortest);
      expect(total).toBeLessThan(1.3 * shortest);
      expect(parts.reduce((sum, { length }) => sum + length, 0)).toBe(total);
    }
    expect(hurried.loom.laid).toBeLessThan(1.3 * rested.loom.laid);
  });

  test('in a hurry is as exact when a drum moves, and is forgotten at rest', () => {
    const analyst = createAnalyst();
    let layout = kit('large-kit');
    analyst(layout);
    for (const x of [-100, -90, -80]) {
      layout = movePiece(layout, 'rack-1', { x, y: 640 });
      const hurried = analyst(layout, true);
      const exact = fresh(layout);
      for (const [k, { clearance }] of hurried.clearances.entries()) {
        expect(Math.abs(clearance - (exact.clearances[k]?.clearance ?? NaN))).toBeLessThan(0.051);
      }
    }
    expect(analyst(layout)).toEqual(fresh(layout));
  });

  test('sorts findings by how bad they are, the nearest first', () => {
    let layout = kit('five-piece-two-racks');
    layout = changeClip(layout, 'mic-rack-1', { angle: 270, reach: 60 });
    layout = setMargin(layout, 120);
    const ranks = { stop: 0, warn: 1, note: 2 };
    const { findings } = fresh(layout);
    expect(findings.some(({ code }) => code === 'mic-struck')).toBe(true);
    expect(findings.some(({ code }) => code === 'mic-tight')).toBe(true);
    const order = findings.map(({ severity }) => ranks[severity]);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    const tight = findings.filter(({ code }) => code === 'mic-tight');
    const clearances = tight.map(({ numbers }) => numbers['clearance'] ?? 0);
    expect(clearances).toEqual(clearances.toSorted((a, b) => a - b));
  });

  test('names every finding once', () => {
    const layout = setMargin(changeClip(kit('large-kit'), 'mic-rack-1', { angle: 270 }), 150);
    const keys = fresh(layout).findings.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe('a finding says', () => {
  const start = kit('five-piece-two-racks');

  test('that a clip of metal may mark the rim', () => {
    expect(codes(changeClip(start, 'mic-rack-1', { material: 'metal' }))).toEqual([
      'clip-metal-rim',
    ]);
  });

  test('that a mic is not plugged, or two share an input', () => {
    expect(codes(setInput(start, 'mic-snare', null))).toContain('run-unplugged');
    const used = start.mics.find(({ id }) => id === 'mic-rack-1')?.input ?? null;
    expect(codes(setInput(start, 'mic-snare', used))).toContain('input-twice');
  });

  test('that the cables carried do not serve every run', () => {
    const one = { ...start, cabling: { ...start.cabling, stock: [{ length: 10_000, count: 1 }] } };
    const { runs, totals, stock, findings } = fresh(one);
    expect(totals.stock).toEqual([{ length: 10_000, count: 1 }]);
    const without = runs.filter(({ carried }) => carried.length === 0);
    expect(without).toHaveLength(runs.length - 1);
    // S2: a length of the list for all but the runs that a far shorter usual length serves.
    const wanted = without.map(({ total }) => (total <= 3000 ? 3000 : 10_000));
    const counted = [3000, 10_000].map((length) => ({
      length,
      count: wanted.filter((one) => one === length).length,
    }));
    expect(counted.every(({ count }) => count > 0)).toBe(true);
    expect(stock.missing).toEqual(counted);
    const told = findings.filter(({ code }) => code === 'stock-missing');
    expect(told.map(({ numbers }) => [numbers['length'], numbers['count']])).toEqual(
      expect.arrayContaining(counted.map(({ length, count }) => [length, count])),
    );
    expect(told.find(({ numbers }) => numbers['length'] === 10_000)?.numbers['listed']).toBe(1);
    expect(told.flatMap(({ about }) => about).toSorted()).toEqual(
      without.map(({ mic }) => mic).toSorted(),
    );
  });

  test('that two cables are joined where no single one reaches', () => {
    const short = { ...start.cabling, stock: [{ length: 4000, count: 40 }] };
    const { runs, stock, findings } = fresh({ ...start, cabling: short });
    const joined = runs.filter(({ carried }) => carried.length === 2).map(({ mic }) => mic);
    expect(joined).not.toEqual([]);
    expect(stock.joins).toBe(joined.length);
    const told = findings.filter(({ code }) => code === 'run-joined');
    expect(told.flatMap(({ about }) => about).toSorted()).toEqual(joined.toSorted());
  });

  test('what is missing in the feet of a layout in inches', () => {
    const none: Layout = { ...start, units: 'in', cabling: { ...start.cabling, stock: [] } };
    const { stock } = fresh(none);
    expect(stock.missing.length).toBeGreaterThan(0);
    for (const { length } of stock.missing) expect((length / 304.8) % 1).toBeCloseTo(0, 9);
  });

  test('that a hand cannot reach a piece', () => {
    const far = movePiece(start, 'crash-2', { x: 400, y: 2600 });
    const found = fresh(far).findings.filter(({ code }) => code === 'piece-out-of-reach');
    expect(found.map(({ about }) => about)).toEqual([['crash-2']]);
    const { beyond, right, left } = found[0]?.numbers ?? {};
    expect(right).toBeGreaterThan(500);
    expect(beyond).toBe(Math.max(right ?? 0, left ?? 0));
  });

  test('that a mic is beyond its stand', () => {
    const away = changeMic(start, 'mic-overhead-hi-hat-side', (mic) =>
      mic.mount.kind === 'stand'
        ? { ...mic, mount: { ...mic.mount, tip: { ...mic.mount.tip, z: 3500 } } }
        : mic,
    );
    expect(codes(away)).toContain('mic-beyond-stand');
    const found = fresh(away).findings.find(({ code }) => code === 'mic-beyond-stand');
    expect(found?.numbers['serving']).toBe(0);
    expect(found?.numbers['rise']).toBeGreaterThan(1000);
    expect(found?.numbers).not.toHaveProperty('folded');
    // On the floor it is below what any mast comes down to.
    const floored = fresh(moveMicTip(start, 'mic-overhead-hi-hat-side', { x: 0, y: 0, z: 0 }));
    const under = floored.findings.find(({ code }) => code === 'mic-beyond-stand');
    expect(under?.numbers['rise']).toBeLessThan(-500);
    // Held by a low tripod, a taller one would do.
    const low = fresh(setStandClass(start, 'mic-overhead-hi-hat-side', 'tripodLow'));
    const served = low.findings.find(({ code }) => code === 'mic-beyond-stand');
    expect(served?.numbers['serving']).toBeGreaterThan(0);
  });
});
