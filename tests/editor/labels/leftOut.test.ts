import { expect, test } from 'vitest';
import { leftOutText, namesLeftOut } from '../../../src/editor/labels/leftOut.ts';
import { placeLabels } from '../../../src/editor/labels/placeLabels.ts';
import { lettering } from '../../../src/editor/labels/wishes.ts';
import { extentOf, extentOfAll, FIT_BORDER } from '../../../src/editor/view/extent.ts';
import { fitted, type View } from '../../../src/editor/view/view.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { kit } from '../support.ts';

const layout = kit('large-kit');
const report = createAnalyst()(layout);
const size = { width: 776, height: 697 };
const whole = fitted(
  { seenFrom: 'house', size, centre: { x: 0, y: 0 }, scale: 1 },
  extentOf(layout),
  FIT_BORDER,
);

/** What is left out of a view, and the names that stand on it. */
function seenIn(view: View) {
  const lettered = {
    ...{ layout, report, selection: null, showRuns: true },
    kitView: { view, deck: layout.deck },
    measure: (text: string) => 8 * text.length,
  };
  const labels = lettering(lettered);
  const ground = { size: view.size, covered: [], reserved: [], before: new Map(), tips: [] };
  const placed = placeLabels(
    labels.map(({ wish }) => wish),
    ground,
  );
  const named = placed.filter(({ key }) => key.startsWith('piece ')).length;
  return { leftOut: namesLeftOut(labels, placed, view.size), named };
}

test('of a kit that stands close some names find no room: these are counted, and with those that stand they are all', () => {
  const { leftOut, named } = seenIn(whole);
  const nameable = layout.pieces.filter(
    ({ kind }) => kind !== 'pedal' && kind !== 'percussion' && kind !== 'throne',
  );
  expect(leftOut).toBeGreaterThan(0);
  expect(leftOut + named).toBe(nameable.length);
});

test('zoomed in far enough nothing is left out, and what is off the screen is not counted', () => {
  const near = fitted(whole, extentOfAll(layout, report.rig), FIT_BORDER);
  const large = { ...near, size: { width: 6000, height: 5000 }, scale: 1.2 };
  expect(seenIn(large).leftOut).toBe(0);
  const aside = { ...whole, centre: { x: 20_000, y: 0 } };
  expect(seenIn(aside)).toEqual({ leftOut: 0, named: 0 });
});

test('it is said in a line, or not at all', () => {
  expect(leftOutText(0, 776)).toBe('');
  expect(leftOutText(1, 776)).toBe('1 name left out: zoom in');
  expect(leftOutText(3, 776)).toBe('3 names left out: zoom in');
  // A narrow drawing has its zoom buttons where the line would go on.
  expect(leftOutText(3, 340)).toBe('3 names left out');
});
