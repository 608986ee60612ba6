import { expect, test } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { patchReport } from '../../src/report/patch.ts';
import { PATCH_TABLES, patchTable } from '../../src/report/patchCsv.ts';

const kit = largeKit('large');
const of = (layout: Layout) => patchReport(layout, createAnalyst()(layout));

test.each(['rock', 'jazz', 'metal'] as const)(
  'high-passes start where the acoustics of %s say',
  (style) => {
    const layout = { ...kit, patch: { ...kit.patch, style } };
    const { rig } = createAnalyst()(layout);
    const { highPasses } = createAcoustics()(layout, rig, { ...DEFAULT_CHOICES, style });
    const { rows } = of(layout);
    expect(rows.length).toBe(kit.mics.length);
    for (const { mic, low, high } of highPasses) {
      expect(rows.find((row) => row.mic === mic)?.highPassRange).toEqual({ low, high });
    }
  },
);

test('cables are taken as the runs take them, in the order of the box inputs', () => {
  const { cables, pull } = of(kit);
  expect(cables.map(({ input }) => input)).toEqual(kit.mics.map((_, index) => index + 1));
  const taken = pull.filter(({ kind }) => kind === 'cable');
  expect(taken.reduce((sum, { needed }) => sum + needed, 0)).toBe(
    cables.reduce((sum, { stock }) => sum + stock.length, 0),
  );
});

test('every table has one row for what it lists', () => {
  const report = of(kit);
  const lengths = PATCH_TABLES.map((table) => patchTable(table, kit, report).rows.length);
  const { rows, cables, strike } = report;
  // The multicore has a row beside the cables.
  expect(lengths).toEqual([rows.length, cables.length + 1, strike.length, rows.length]);
});
