import { describe, expect, test } from 'vitest';
import { paintLabels } from '../../../src/editor/labels/paintLabels.ts';
import { type Box, type PlacedLabel, placeLabels } from '../../../src/editor/labels/placeLabels.ts';
import { lettering } from '../../../src/editor/labels/wishes.ts';
import { palettes } from '../../../src/editor/palette.ts';
import { type ScreenPoint, zoomed } from '../../../src/editor/view/view.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { seededKits } from '../../support/randomKit.ts';
import { tipsIn, viewOf } from '../support.ts';

const analyse = createAnalyst();

const away = ({ left, top, width, height }: Box, { x, y }: ScreenPoint): number =>
  Math.hypot(Math.max(left - x, 0, x - left - width), Math.max(top - y, 0, y - top - height));

/** A mic's label with the way to its own tip and to the nearest of all, px. */
interface Told {
  readonly label: PlacedLabel;
  readonly own: number;
  readonly nearest: number;
}

/** The labels of a layout's mics, from both sides, at three zooms. */
function told(layout: Layout): readonly Told[] {
  const report = analyse(layout);
  return (['house', 'player'] as const).flatMap((seenFrom) =>
    [0.5, 1, 2.5].flatMap((factor) => {
      const fit = viewOf(layout, seenFrom);
      const kitView = { ...fit, view: zoomed(fit.view, factor, { x: 400, y: 300 }) };
      const measure = (text: string) => text.length * 8;
      const on = { layout, report, selection: null, showRuns: true, kitView, measure };
      const tips = tipsIn(report, kitView);
      const ground = { size: kitView.view.size, covered: [], reserved: [], before: new Map() };
      return placeLabels(
        lettering(on).map(({ wish }) => wish),
        { ...ground, tips },
      )
        .filter(({ key }) => key.startsWith('mic '))
        .map((label) => ({
          label,
          own: away(label.box, label.at),
          nearest: Math.min(...tips.map((tip) => away(label.box, tip))),
        }));
    }),
  );
}

const layouts = [
  ...STARTING_KITS.map(({ make }) => make('kit')),
  ...STARTING_KITS.map(({ make }) => ({ ...make('kit'), margin: 200 })),
  ...seededKits(20, 8),
];

describe('the line from a label to its mic', () => {
  const all = layouts.flatMap(told);

  test('L8: where a mic has no line to its label, no other tip is nearer to it, and it stands beside its own', () => {
    for (const { label, own, nearest } of all) {
      if (label.led) continue;
      expect(own).toBe(nearest);
      expect(own).toBeLessThan(22);
    }
    expect(all.filter(({ label }) => !label.led).length).toBeGreaterThan(all.length / 3);
  });

  test('L8: a line is for a label that is far, or nearer to another tip', () => {
    const led = all.filter(({ label }) => label.led);
    for (const { own, nearest } of led) expect(own >= 22 || nearest < own).toBe(true);
    expect(led.some(({ own }) => own < 22)).toBe(true);
  });

  test.each([palettes.dark, palettes.light])(
    'L8: just the labels that need a line get one, from their own tip',
    (colours) => {
      for (const verdict of ['clear', 'tight', 'struck'] as const) {
        const look = { kind: 'verdict', verdict, strong: false } as const;
        for (const { label } of all.slice(0, 80)) {
          const starts: number[][] = [];
          // Colours of its own: nothing is drawn from a picture of before.
          paintLabels({ canvas: canvasOf(starts), colours: { ...colours } }, [{ label, look }]);
          const fromTip = starts.filter(([x, y]) => x === label.at.x && y === label.at.y);
          expect(fromTip.length > 0).toBe(label.led);
        }
      }
    },
  );
});

/** A canvas that only notes where its lines start. */
const canvasOf = (starts: number[][]): CanvasRenderingContext2D =>
  new Proxy({} as CanvasRenderingContext2D, {
    set: () => true,
    get:
      (_, name) =>
      (...at: number[]) => {
        if (name === 'moveTo') starts.push(at);
        return { a: 1, width: 0 };
      },
  });
