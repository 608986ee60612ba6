import { useCallback, useEffect, useMemo, useRef } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { FloorReport } from '../../report/floor.ts';
import type { Report } from '../../report/report.ts';
import type { RingOfMic, RingPlace } from '../../report/ring.ts';
import type { Selection } from '../../session/selection.ts';
import type { LengthUnit } from '../../units/lengthText.ts';
import { contourLabels } from '../labels/contourWishes.ts';
import { FONTS } from '../labels/lettering.ts';
import { measureText } from '../labels/measureText.ts';
import { paintLabel } from '../labels/paintLabels.ts';
import { type Box, placeLabels } from '../labels/placeLabels.ts';
import { ringLabels } from '../labels/ringWishes.ts';
import { lettering, measureLabel } from '../labels/wishes.ts';
import type { Palette } from '../palette.ts';
import { inputPitch, inputSpots } from '../shapes/boxShape.ts';
import { paintLegend } from '../shapes/legend.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintScaleBar } from '../shapes/scaleBar.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import { toScreen } from '../view/view.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly layout: Layout;
  readonly report: Report;
  readonly selection: Selection | null;
  readonly showRuns: boolean;
  readonly kitView: KitView;
  readonly covered: readonly Box[];
  readonly ring: RingOfMic | null;
  readonly floor: FloorReport | null;
  readonly asked: RingPlace | null;
  readonly colours: Palette;
}

/** Px from which the box's inputs carry their numbers. */
const NUMBERS_FROM = 19;

/** Names, verdicts, input numbers and the scale bar (screen px). */
export function Labels(props: Props) {
  const { layout, report, selection, showRuns, kitView, covered, ring, floor, asked, colours } =
    props;
  const before = useRef<ReadonlyMap<string, number>>(new Map());
  const placed = useMemo(() => {
    const lettered = { layout, report, selection, showRuns, kitView, measure: measureText };
    const labels = [
      ...measureLabel(lettered),
      ...ringLabels(lettered, ring, asked),
      ...lettering(lettered),
      ...contourLabels(lettered, floor),
    ];
    const looks = new Map(labels.map(({ wish, look }) => [wish.key, look]));
    const wishes = labels.map(({ wish }) => wish);
    const ground = {
      size: kitView.view.size,
      covered: [...covered, ...micBoxes(report, kitView)],
      before: before.current,
    };
    return placeLabels(wishes, ground).map((label) => ({ label, look: looks.get(label.key) }));
  }, [layout, report, selection, showRuns, kitView, covered, ring, floor, asked]);
  useEffect(() => {
    before.current = new Map(placed.map(({ label }) => [label.key, label.place]));
  }, [placed]);
  const paint = useCallback(
    ({ canvas }: Pen) => {
      paintInputNumbers({ canvas, colours }, layout, kitView);
      // The last to choose lies lowest: what matters most is drawn over the rest.
      for (const { label, look } of [...placed].reverse()) {
        if (look) paintLabel({ canvas, colours }, label, look);
      }
      paintFooter({ canvas, colours }, kitView, layout.units);
    },
    [placed, layout, kitView, colours],
  );
  return <Drawn paint={paint} colours={colours} />;
}
/** The scale bar and what the marks mean, along the lower edge. */
function paintFooter(ink: Ink, { view }: KitView, unit: LengthUnit): void {
  const { canvas, colours } = ink;
  const at = { x: 18, y: view.size.height - 22 };
  paintScaleBar(canvas, { at, pxPerMm: view.scale, unit, font: FONTS.strong }, colours);
  const legend = { x: at.x + 205, y: at.y + 1, font: FONTS.plain, unit };
  paintLegend(canvas, { ...legend, room: view.size.width - legend.x - 70 }, colours);
}

interface Ink {
  readonly canvas: CanvasRenderingContext2D;
  readonly colours: Palette;
}

/** Labels keep off the mics themselves. */
const micBoxes = (report: Report, kitView: KitView): readonly Box[] =>
  report.rig.mics.flatMap(({ solids }) =>
    solids.flatMap(({ part, capsule }) => {
      if (part !== 'body' && part !== 'plate') return [];
      const [a, b] = [kitToScreen(kitView, capsule.a), kitToScreen(kitView, capsule.b)];
      const reach = capsule.radius * kitView.view.scale + 4;
      return [
        {
          left: Math.min(a.x, b.x) - reach,
          top: Math.min(a.y, b.y) - reach,
          width: Math.abs(a.x - b.x) + 2 * reach,
          height: Math.abs(a.y - b.y) + 2 * reach,
        },
      ];
    }),
  );

function paintInputNumbers({ canvas, colours }: Ink, layout: Layout, { view }: KitView): void {
  if (inputPitch(view.scale) < NUMBERS_FROM) return;
  canvas.font = FONTS.strong;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'middle';
  canvas.lineJoin = 'round';
  canvas.strokeStyle = colours.halo;
  canvas.fillStyle = colours.ink;
  canvas.lineWidth = 3.5;
  for (const [i, spot] of inputSpots(layout.box).entries()) {
    const at = toScreen(view, spot);
    canvas.strokeText(String(i + 1), at.x, at.y);
    canvas.fillText(String(i + 1), at.x, at.y);
  }
}
