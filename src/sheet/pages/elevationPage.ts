import type { Facing } from '../../rig/standpoint.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { elevationDrawing } from '../drawing/elevationDrawing.ts';
import type { Mark } from '../mark.ts';
import { layOut, type Room } from '../paper/layOut.ts';
import { drawnPoints, placeLargeLabels } from '../paper/placeLabels.ts';
import { RULER_ROOM, rulerMarks } from '../paper/ruler.ts';
import { scaleFor } from '../paper/scale.ts';
import { roomOf, textMark } from '../paper/text.ts';
import { type SheetSource, scaleMarks } from './placementPage.ts';

const BELOW: Mm = 13;
const GAP: Mm = 4;
const CAPTION: Mm = 6;

/** Front and side at one scale, beside each other or one over the other, whichever lets them be larger. */
export function elevationBody(source: SheetSource, body: Room): readonly Mark[] {
  const { layout, words, seenFrom } = source;
  const facing = seenFrom === 'house' ? words.sides.front : words.sides.behind;
  const front = drawn(source, 'front');
  const side = drawn(source, 'side');
  const room = { ...body, height: body.height - BELOW };
  const beside = halves(room, [sizeOf(front).width, sizeOf(side).width], 'beside');
  const over = halves(room, [sizeOf(front).height, sizeOf(side).height], 'over');
  const scaleIn = ([a, b]: readonly [Room, Room]): number =>
    Math.max(scaleFor(sizeOf(front), inner(a)), scaleFor(sizeOf(side), inner(b)));
  const division = scaleIn(beside) < scaleIn(over) ? beside : over;
  const scale = scaleIn(division);
  return [
    ...paneMarks(front, { room: division[0], scale, title: facing }, source),
    ...paneMarks(side, { room: division[1], scale, title: words.sides.side }, source),
    ...scaleMarks(body, scale, { layout, words, legend: words.legends.elevations }),
  ];
}

const drawn = ({ layout, report, seenFrom, words }: SheetSource, facing: Facing): Drawing =>
  elevationDrawing(layout, report, { facing, seenFrom }, words.forms);

const sizeOf = ({ low, high }: Drawing) => ({ width: high.x - low.x, height: high.y - low.y });

/** Two rooms, shared by what each drawing needs. */
function halves(
  room: Room,
  [a, b]: readonly [Mm, Mm],
  way: 'beside' | 'over',
): readonly [Room, Room] {
  const border = way === 'beside' ? RULER_ROOM + 2 : CAPTION + 3;
  const all = (way === 'beside' ? room.width : room.height) - GAP - 2 * border;
  const first = border + (all * a) / (a + b);
  const second = border + (all * b) / (a + b);
  return way === 'beside'
    ? [
        { ...room, width: first },
        { ...room, x: room.x + first + GAP, width: second },
      ]
    : [
        { ...room, height: first },
        { ...room, y: room.y + first + GAP, height: second },
      ];
}

/** The part of a room that the drawing may take: the ruler stands at its left. */
const inner = ({ x, y, width, height }: Room): Room => ({
  x: x + RULER_ROOM + 1,
  y: y + CAPTION,
  width: width - RULER_ROOM - 2,
  height: height - CAPTION - 3,
});

interface Pane {
  readonly room: Room;
  readonly scale: number;
  readonly title: string;
}

function paneMarks(
  drawing: Drawing,
  { room, scale, title }: Pane,
  { layout }: SheetSource,
): readonly Mark[] {
  const onPaper = layOut(drawing, inner(room), scale);
  const zero = onPaper.point({ x: drawing.low.x, y: 0 });
  const ruler = rulerMarks(
    {
      zero: { x: zero.x - 1.5, y: zero.y },
      along: { x: 0, y: -1 },
      out: { x: -1, y: 0 },
      length: drawing.high.y,
    },
    scale,
    layout.units,
  );
  const caption = textMark(title, { x: room.x, y: room.y + 3 }, { size: 2.8, bold: true });
  const taken = [...ruler, caption].flatMap((m) => (m.kind === 'text' ? [roomOf(m)] : []));
  const labels = drawing.labels.map(({ at, forms }) => ({ at: onPaper.point(at), forms }));
  const laid = onPaper.marks(drawing.marks);
  return [
    ...laid,
    ...ruler,
    caption,
    ...placeLargeLabels(labels, room, { taken, drawn: drawnPoints(laid) }),
  ];
}
