import { useCallback, useMemo } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { FloorReport } from '../../report/floor.ts';
import type { Report } from '../../report/report.ts';
import type { RingOfMic, RingPlace } from '../../report/ring.ts';
import type { PlanMarks } from '../../session/patchView.ts';
import type { Selection } from '../../session/selection.ts';
import { contourLabels } from '../labels/contourWishes.ts';
import { FONTS } from '../labels/lettering.ts';
import { markLabels } from '../labels/markWishes.ts';
import { measureText } from '../labels/measureText.ts';
import type { Box } from '../labels/placeLabels.ts';
import type { Furniture } from '../labels/reserved.ts';
import { ringLabels } from '../labels/ringWishes.ts';
import { lettering, measureLabel } from '../labels/wishes.ts';
import type { MicFocus } from '../move/micFocus.ts';
import type { Palette } from '../palette.ts';
import { inputPitch, inputSpots } from '../shapes/boxShape.ts';
import type { Pen, ScreenPen } from '../shapes/pen.ts';
import type { KitView } from '../view/kitView.ts';
import { toScreen } from '../view/view.ts';
import { Drawn } from './Drawn.tsx';
import { Footer } from './Footer.tsx';
import { PlacedLabels } from './PlacedLabels.tsx';

interface Props {
  readonly layout: Layout;
  readonly report: Report;
  readonly selection: Selection | null;
  readonly showRuns: boolean;
  readonly kitView: KitView;
  readonly covered: readonly Box[];
  readonly furniture: Furniture;
  readonly ring: RingOfMic | null;
  readonly floor: FloorReport | null;
  readonly asked: RingPlace | null;
  readonly focus: MicFocus | null;
  readonly marks: PlanMarks | null;
  readonly colours: Palette;
}

/** Names, verdicts, input numbers and the scale bar of the plan (screen px). */
export function PlanLabels(props: Props) {
  const {
    layout,
    report,
    selection,
    showRuns,
    kitView,
    ring,
    floor,
    asked,
    focus,
    marks,
    colours,
  } = props;
  const labels = useMemo(() => {
    // Where marks have their say, clearances are silent; numbers of steps and channels must not be taken for those of inputs.
    const numbersRuns = showRuns && !marks;
    const on = { layout, report, selection, showRuns: numbersRuns, kitView, measure: measureText };
    if (marks) return [...lettering(on, markLabels(on, marks)), ...contourLabels(on, floor)];
    return [
      ...measureLabel(on, focus?.place ?? null),
      ...ringLabels(on, ring, asked),
      ...lettering(on),
      ...contourLabels(on, floor),
    ];
  }, [layout, report, selection, showRuns, kitView, ring, floor, asked, focus, marks]);
  const { box } = layout;
  const paintNumbers = useCallback(
    ({ canvas }: Pen) => paintInputNumbers({ canvas, colours }, box, kitView),
    [box, kitView, colours],
  );
  return (
    <>
      <Drawn paint={paintNumbers} colours={colours} />
      <PlacedLabels
        labels={labels}
        report={report}
        kitView={kitView}
        covered={props.covered}
        furniture={props.furniture}
        colours={colours}
      />
      <Footer view={kitView.view} unit={layout.units} legend={marks === null} colours={colours} />
    </>
  );
}

/** Px from which the box's inputs carry their numbers. */
const NUMBERS_FROM = 19;

function paintInputNumbers(
  { canvas, colours }: ScreenPen,
  box: Layout['box'],
  { view }: KitView,
): void {
  if (inputPitch(view.scale) < NUMBERS_FROM) return;
  canvas.font = FONTS.strong;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'middle';
  canvas.lineJoin = 'round';
  canvas.strokeStyle = colours.halo;
  canvas.fillStyle = colours.ink;
  canvas.lineWidth = 3.5;
  for (const [i, spot] of inputSpots(box).entries()) {
    const at = toScreen(view, spot);
    canvas.strokeText(String(i + 1), at.x, at.y);
    canvas.fillText(String(i + 1), at.x, at.y);
  }
}
