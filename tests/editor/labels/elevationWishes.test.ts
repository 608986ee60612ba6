import { expect, test } from 'vitest';
import { kitExtent } from '../../../src/editor/elevation/extent.ts';
import { createTurner } from '../../../src/editor/elevation/turned.ts';
import { elevationLabels } from '../../../src/editor/labels/elevationWishes.ts';
import { placeLabels } from '../../../src/editor/labels/placeLabels.ts';
import type { Lettered } from '../../../src/editor/labels/wishes.ts';
import { FIT_BORDER } from '../../../src/editor/view/extent.ts';
import { fitted } from '../../../src/editor/view/view.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { figureOf } from '../../../src/report/figure.ts';
import { standpointOf } from '../../../src/rig/standpoint.ts';
import type { Selection } from '../../../src/session/selection.ts';
import { kit, tipsIn } from '../support.ts';

// Some of the kit's mics are tight by this margin.
const plain = kit('large-kit');
const layout = { ...plain, margin: 66 };
const report = createAnalyst()(layout);
const standpoint = standpointOf(layout.deck, 'side', 'house');
const turner = createTurner(standpoint);
const turned = turner.report(report);
const size = { width: 776, height: 700 };
const view = fitted(
  { seenFrom: 'player', size, centre: { x: 0, y: 0 }, scale: 1 },
  kitExtent(turned.rig, turner.figure(figureOf(layout.player, layout.pieces))),
  FIT_BORDER,
);
const lettered = (selection: Selection | null): Lettered => ({
  layout,
  report: turned,
  selection,
  showRuns: true,
  kitView: { view, deck: { kit: { x: 0, y: 0, turn: 0 } } },
  measure: (text) => text.length * 8,
});
const micsWith = (verdict: string) =>
  report.clearances.filter((row) => row.verdict === verdict).map(({ mic }) => `mic ${mic}`);
const placed = (selection: Selection | null = null) =>
  placeLabels(
    elevationLabels(lettered(selection), standpoint, true).map(({ wish }) => wish),
    {
      size,
      covered: [],
      reserved: [],
      before: new Map(),
      tips: tipsIn(turned, lettered(null).kitView),
    },
  );

test('from the side every mic that is tight or selected is lettered, and clear ones where they fit', () => {
  const [clear = ''] = micsWith('clear');
  const keys = placed({ kind: 'mic', id: clear.slice(4) }).map(({ key }) => key);
  expect(micsWith('tight').length).toBeGreaterThan(2);
  expect(keys).toEqual(expect.arrayContaining([clear, ...micsWith('tight')]));
});

test('a clear mic has its number close by it, never a mark alone or a number far off', () => {
  const clear = new Set(micsWith('clear'));
  const labels = placed().filter(({ key }) => clear.has(key));
  expect(labels.length).toBeGreaterThan(3);
  expect(labels.length).toBeLessThan(clear.size);
  for (const { at, box, form } of labels) {
    expect(form.text).toMatch(/\d/);
    const x = Math.max(box.left - at.x, 0, at.x - box.left - box.width);
    const y = Math.max(box.top - at.y, 0, at.y - box.top - box.height);
    expect(Math.hypot(x, y)).toBeLessThan(13);
  }
});

test('beside the plan clear mics are left to the plan', () => {
  const labels = elevationLabels(lettered(null), standpoint, false);
  const keys = labels.map(({ wish }) => wish.key).filter((key) => key.startsWith('mic '));
  expect(keys.toSorted()).toEqual(micsWith('tight').toSorted());
});
