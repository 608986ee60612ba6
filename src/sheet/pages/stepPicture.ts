import type { StepFocus } from '../../report/placement/focus.ts';
import type { Spot } from '../../report/placement/spots.ts';
import { showLengthNumber } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import { planDrawing } from '../drawing/planDrawing.ts';
import { type CircleMark, filled, line, type Mark, type Page, type Point } from '../mark.ts';
import { layOut, type OnPaper, type Room } from '../paper/layOut.ts';
import { ASCENT, DESCENT } from '../paper/lettering.ts';
import { LABEL_SIZE, placePaperLabels } from '../paper/placeLabels.ts';
import { roomOf, textMark } from '../paper/text.ts';
import type { SheetSource } from './placementPage.ts';

/** Small, so that its letters are large on a screen that is as wide as half a tablet. */
const SIZE = { width: 92, height: 80 } as const;
const BORDER: Mm = 2;
const AUDIENCE: Mm = 4;
const RING: Mm = 2.6;

/** The plan, faint, with what one step of the set-up is about: rings, and the measures from both edges. Not to a round scale. */
export function stepPicture(source: SheetSource, focus: StepFocus): Page {
  const { layout, report, words, seenFrom } = source;
  const drawing = planDrawing(layout, report, seenFrom, words.forms);
  const isHouse = seenFrom === 'house';
  const room: Room = {
    x: BORDER,
    y: BORDER + (isHouse ? 0 : AUDIENCE),
    width: SIZE.width - 2 * BORDER,
    height: SIZE.height - 2 * BORDER - AUDIENCE,
  };
  const scale = Math.max(
    (drawing.high.x - drawing.low.x) / room.width,
    (drawing.high.y - drawing.low.y) / room.height,
  );
  const onPaper = layOut(drawing, room, scale);
  const way = isHouse ? -1 : 1;
  const place = ({ x, y }: Point): Point => onPaper.point({ x: way * x, y: way * y });
  const audience = textMark(
    words.sides.audience,
    { x: SIZE.width / 2, y: isHouse ? SIZE.height - 1.2 : BORDER + ASCENT * LABEL_SIZE },
    { size: LABEL_SIZE, bold: true, anchor: 'middle', layer: 'LABELS' },
  );
  return {
    ...SIZE,
    marks: [
      ...faint(onPaper, drawing.marks),
      ...focusMarks(source, focus, place),
      ...numbers(source, focus, place, roomOf(audience)),
      audience,
    ],
  };
}

/** Everything that is not at hand, in light greys. */
const faint = (onPaper: OnPaper, marks: readonly Mark[]): readonly Mark[] =>
  onPaper.marks(marks).map((mark) => {
    if (mark.kind === 'text') return mark;
    const { look } = mark;
    const ink = look.ink === null ? null : 0.5 + look.ink / 2;
    const fill = look.fill === null ? null : 0.85 + look.fill * 0.15;
    return { ...mark, look: { ...look, ink, fill } };
  });

/** Where a spot is measured from: the points of the left and of the back edge square to it. */
function edgesOf({ at }: Spot, { deck }: SheetSource['layout']): readonly [Point, Point] {
  return [
    { x: -deck.width / 2, y: at.y },
    { x: at.x, y: -deck.depth / 2 },
  ];
}

function focusMarks(
  { layout }: SheetSource,
  { spots, looks, route }: StepFocus,
  place: (p: Point) => Point,
): readonly Mark[] {
  const ring = (at: Point, radius: Mm): CircleMark => ({
    kind: 'circle',
    layer: 'DIMENSIONS',
    centre: place(at),
    radius,
    look: line(0.6),
  });
  const stroke = (points: readonly Point[], width: Mm): Mark => ({
    kind: 'line',
    layer: 'DIMENSIONS',
    points: points.map(place),
    closed: false,
    look: line(width),
  });
  return [
    ...(route.length > 1 ? [stroke(route, 0.9)] : []),
    ...route.slice(-1).map((at) => ring(at, RING)),
    ...route.slice(0, 1).map((at) => ring(at, RING)),
    ...spots.flatMap((spot) => edgesOf(spot, layout).map((edge) => stroke([edge, spot.at], 0.25))),
    ...spots.map(({ at }): Mark => ({ ...ring(at, 0.9), look: filled(0, 0) })),
    ...spots.map(({ at }) => ring(at, RING)),
    ...looks.map((at) => ring(at, RING * 0.7)),
  ];
}

/** The two measures of every spot, each beside its line. */
function numbers(
  { layout }: SheetSource,
  { spots }: StepFocus,
  place: (p: Point) => Point,
  taken: Room,
): readonly Mark[] {
  const labels = spots.flatMap((spot, i) => {
    const { fromLeft, fromBack } = spot.measures;
    const part = 0.5 + 0.2 * i;
    return edgesOf(spot, layout).map((edge, k) => {
      const [a, b] = [place(edge), place(spot.at)];
      const at = { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
      return { at, forms: [showLengthNumber(k === 0 ? fromLeft : fromBack, layout.units)] };
    });
  });
  const rings = spots.map(({ at }): Room => {
    const { x, y } = place(at);
    return { x: x - RING, y: y - RING, width: 2 * RING, height: 2 * RING };
  });
  const whole: Room = {
    x: BORDER,
    y: BORDER,
    width: SIZE.width - 2 * BORDER,
    height: SIZE.height - 2 * BORDER - (ASCENT + DESCENT),
  };
  return placePaperLabels(labels, whole, { taken: [taken, ...rings] });
}
