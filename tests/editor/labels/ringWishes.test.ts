import { describe, expect, test } from 'vitest';
import { ringBoxes, ringLabels } from '../../../src/editor/labels/ringWishes.ts';
import { type Lettered, RANK } from '../../../src/editor/labels/wishes.ts';
import { besideRim, RING_OUT } from '../../../src/editor/rim/rimLine.ts';
import { kitToScreen } from '../../../src/editor/view/kitView.ts';
import { zoomed } from '../../../src/editor/view/view.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { clipIn, placeOnRing, ringOf } from '../../../src/report/ring.ts';
import { kit, viewOf } from '../support.ts';

const layout = kit('five-piece-one-rack');
const id = layout.mics.find(({ mount }) => mount.kind === 'clip')?.id ?? '';
const drum = clipIn(layout, id)?.drum;
const ring = ringOf(layout, id);
if (!drum || !ring) throw new Error('expected a clip with its ring');
const fit = viewOf(layout);
const near = { ...fit, view: zoomed(fit.view, 5, kitToScreen(fit, drum)) };
const lettered: Lettered = {
  layout,
  report: createAnalyst()(layout),
  selection: { kind: 'mic', id },
  showRuns: true,
  kitView: near,
  measure: (text) => text.length * 8,
};
const texts = (labels: ReturnType<typeof ringLabels>) =>
  labels.map(({ wish }) => wish.forms[0]?.text);

describe('what is written on a ring', () => {
  test('close by every long arc says that it is of the rim and its verdict, outside the drum', () => {
    const labels = ringLabels(lettered, ring, null);
    expect(new Set(texts(labels))).toEqual(new Set(['here: clear', 'here: tight', 'here: struck']));
    const middle = kitToScreen(near, drum);
    const edge = kitToScreen(near, besideRim(drum, 0, 0));
    const radius = Math.hypot(edge.x - middle.x, edge.y - middle.y);
    for (const { wish } of labels) {
      for (const { x, y } of wish.spots) {
        const away = Math.hypot(wish.at.x + x - middle.x, wish.at.y + y - middle.y);
        expect(away).toBeGreaterThan(radius * 0.8);
      }
    }
  });

  test('gives way to every verdict of a mic and every name', () => {
    for (const { wish } of ringLabels(lettered, ring, null)) {
      expect(wish.rank).toBeGreaterThan(Math.max(RANK.clear, RANK.piece));
      expect(wish.must).toBe(false);
    }
  });

  test('each word stands once, however many arcs have its verdict, at the longest first', () => {
    const striped = {
      ...ring,
      arcs: (['struck', 'tight', 'struck', 'clear', 'struck', 'tight'] as const).map(
        (verdict, i) => ({ verdict, from: 60 * i, to: 60 * i + 60 }),
      ),
    };
    const labels = ringLabels(lettered, striped, null);
    expect(texts(labels)).toEqual(['here: struck', 'here: tight', 'here: clear']);
    expect(labels[0]?.wish.spots.length).toBeGreaterThan(labels[2]?.wish.spots.length ?? 0);
  });

  test('from afar short arcs say nothing', () => {
    const far = { ...fit, view: zoomed(fit.view, 0.3, { x: 0, y: 0 }) };
    expect(ringLabels({ ...lettered, kitView: far }, ring, null).length).toBeLessThan(
      ringLabels(lettered, ring, null).length,
    );
  });

  test('the place that was asked about says its clearance', () => {
    const asked = placeOnRing(layout, id, 200);
    const labels = ringLabels(lettered, ring, asked);
    const last = labels.at(-1);
    expect(last?.wish.forms[0]?.text).toBe(`${Math.floor(asked?.clearance ?? 0)} mm`);
    expect(last?.look).toEqual({ kind: 'measure', verdict: asked?.verdict });
    expect(last?.wish.must).toBe(true);
    expect(ringLabels(lettered, null, asked)).toEqual([]);
  });
});

describe('where labels keep off a ring', () => {
  test('all round, near and from afar, no place of the ring is farther than half a step from the middle of a box', () => {
    for (const kitView of [near, fit]) {
      const boxes = ringBoxes(layout, ring, kitView);
      for (let angle = 0; angle < 360; angle += 1) {
        const spot = kitToScreen(kitView, besideRim(drum, angle, RING_OUT / kitView.view.scale));
        const gaps = boxes.map(({ left, top, width, height }) =>
          Math.hypot(left + width / 2 - spot.x, top + height / 2 - spot.y),
        );
        expect(Math.min(...gaps)).toBeLessThan(9);
      }
    }
  });

  test('without a ring there is nothing to keep off', () => {
    expect(ringBoxes(layout, null, near)).toEqual([]);
  });
});
