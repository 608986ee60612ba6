import { describe, expect, test } from 'vitest';
import { markLabels } from '../../../src/editor/labels/markWishes.ts';
import { placeLabels } from '../../../src/editor/labels/placeLabels.ts';
import { lettering } from '../../../src/editor/labels/wishes.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { PlanMark } from '../../../src/session/patchView.ts';
import { tipsIn, viewOf } from '../support.ts';

const analyse = createAnalyst();

describe('marks on the plan', () => {
  test('every mic has its mark in place of its verdict, in every starting kit', () => {
    for (const { make } of STARTING_KITS) {
      const layout = make('kit');
      const kitView = viewOf(layout);
      const on = {
        layout,
        report: analyse(layout),
        selection: null,
        showRuns: true,
        kitView,
        measure: (text: string) => text.length * 8,
      };
      const marks = layout.mics.map(
        ({ id }, i): PlanMark => ({ about: id, sign: 'pass', texts: [`✓ ${i + 1}`] }),
      );
      const labels = lettering(on, markLabels(on, { marks }));
      const placed = placeLabels(
        labels.map(({ wish }) => wish),
        {
          size: kitView.view.size,
          covered: [],
          reserved: [],
          before: new Map(),
          tips: tipsIn(on.report, kitView),
        },
      );
      const keys = placed.map(({ key }) => key);
      expect(keys).toEqual(expect.arrayContaining(layout.mics.map(({ id }) => `mark ${id}`)));
      expect(keys.filter((key) => key.startsWith('mic '))).toEqual([]);
    }
  });

  test('what is not there has none', () => {
    const layout = STARTING_KITS[0]?.make('kit');
    if (!layout) throw new Error('there is a starting kit');
    const on = {
      layout,
      report: analyse(layout),
      selection: null,
      showRuns: true,
      kitView: viewOf(layout),
      measure: (text: string) => text.length * 8,
    };
    const gone: PlanMark = { about: 'gone', sign: 'undo', texts: ['1'] };
    const throne: PlanMark = { about: 'throne', sign: 'undo', texts: ['2'] };
    expect(markLabels(on, { marks: [gone, throne] }).map(({ wish }) => wish.key)).toEqual([
      'mark throne',
    ]);
  });
});
