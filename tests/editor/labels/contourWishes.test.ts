import { expect, test } from 'vitest';
import { contourLabels } from '../../../src/editor/labels/contourWishes.ts';
import { type Lettered, RANK } from '../../../src/editor/labels/wishes.ts';
import { kitToScreen } from '../../../src/editor/view/kitView.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { floorOf } from '../../../src/report/floor.ts';
import { kit, viewOf } from '../support.ts';

const layout = kit('five-piece-one-rack');
const lettered: Lettered = {
  layout,
  report: createAnalyst()(layout),
  selection: null,
  showRuns: true,
  kitView: viewOf(layout),
  measure: (text) => text.length * 8,
};

test('every contour of the stick floor is offered its height, at places on its own line', () => {
  const floor = floorOf(layout);
  const labels = contourLabels(lettered, floor);
  expect(labels.map(({ wish }) => wish.forms[0]?.text)).toEqual(
    floor.contours.map(({ height }) => String(height)),
  );
  for (const [i, { wish }] of labels.entries()) {
    const line = (floor.contours[i]?.rings ?? []).flat();
    const seen = line.map((spot) => kitToScreen(lettered.kitView, spot));
    expect(wish.spots.length).toBeGreaterThan(3);
    for (const spot of wish.spots) {
      const at = { x: wish.at.x + spot.x, y: wish.at.y + spot.y };
      const away = Math.min(...seen.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)));
      expect(away).toBeLessThan(1e-6);
    }
  }
});

test('strong heights choose first, and those about the height of a mic that is selected', () => {
  const floor = floorOf(layout);
  const inOrder = (on: Lettered) =>
    contourLabels(on, floor)
      .toSorted((a, b) => a.wish.rank - b.wish.rank)
      .map(({ wish }) => Number(wish.forms[0]?.text));
  expect(inOrder(lettered)[0]).toBe(1000);
  const [mic] = lettered.report.rig.mics.filter(({ tip }) => tip.z > 600 && tip.z < 900);
  if (!mic) throw new Error('expected a mic between contours');
  const selection = { kind: 'mic', id: mic.mic.id } as const;
  const about = inOrder({ ...lettered, selection });
  const away = about.map((height) => Math.abs(height - mic.tip.z));
  expect(away).toEqual(away.toSorted((a, b) => a - b));
  expect(about).toHaveLength(floor.contours.length);
});

test('heights keep apart from each other, and after what mics and pieces say', () => {
  for (const { wish } of contourLabels(lettered, floorOf(layout))) {
    expect(wish.apart).toBeGreaterThan(20);
    expect(wish.rank).toBeGreaterThan(RANK.clear);
  }
});

test('heights are in the units shown, and there are none without a floor', () => {
  const inches = { ...lettered, layout: { ...layout, units: 'in' as const } };
  const labels = contourLabels(inches, floorOf(inches.layout));
  for (const { wish } of labels) expect(Number(wish.forms[0]?.text) % 4).toBe(0);
  expect(labels.length).toBeGreaterThan(3);
  expect(contourLabels(lettered, null)).toEqual([]);
});
