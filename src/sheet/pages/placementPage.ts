import type { Layout } from '../../layout/layout.ts';
import type { Report } from '../../report/report.ts';
import type { SeenFrom } from '../../rig/standpoint.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { planDrawing } from '../drawing/planDrawing.ts';
import type { Mark } from '../mark.ts';
import { layOut, type OnPaper, type Room } from '../paper/layOut.ts';
import { ASCENT } from '../paper/lettering.ts';
import { drawnPoints, placeLargeLabels } from '../paper/placeLabels.ts';
import { RULER_ROOM, rulerMarks } from '../paper/ruler.ts';
import { scaleFor } from '../paper/scale.ts';
import { scaleBarMarks } from '../paper/scaleBar.ts';
import {
  naturalWidth,
  restOf,
  type SetTable,
  type SheetTable,
  SMALLEST_TABLE,
  setTable,
  TABLE_SIZES,
} from '../paper/table.ts';
import { paragraph, roomOf, smallParagraph, textMark } from '../paper/text.ts';
import type { SheetWords } from '../words.ts';

/** The body of a page, and the rows of its table that found no room there. */
export interface Body {
  readonly marks: readonly Mark[];
  readonly rest: SheetTable | null;
}

/** What a sheet is made from. */
export interface SheetSource {
  readonly layout: Layout;
  readonly report: Report;
  readonly words: SheetWords;
  readonly seenFrom: SeenFrom;
}

const GAP: Mm = 4;
/** Scale bar, scale and legend below the plan. */
const BELOW: Mm = 13;
/** Over the plan: the side it is seen from, and the ruler. */
const SIDE_LETTERS: Mm = 2.8;
/** A plan that is lower than this is no use: the table gives way and goes on, on the next page. */
const LEAST_PLAN: Mm = 80;

/**
 * The plan to scale, with what a hand with a tape measures beside it (lying paper) or below it (standing paper). Where that would leave too little of the
 * plan the table has the next page to itself.
 */
export function placementBody(source: SheetSource, body: Room): Body {
  const { words } = source;
  const isLying = body.width > body.height;
  const inSize = (size: Mm): Division =>
    isLying ? besideTable(words, body, size) : belowTable(words, body, size);
  const set = largestThatCostsNothing(source, inSize);
  const drawn = sizeOf(drawingOf(source));
  const scaleIn = (plan: Room): number => scaleFor(drawn, innerRoom(plan, source.seenFrom));
  if (isTooSmall(scaleIn(set.plan), scaleIn(body))) {
    return { marks: planMarks(source, body), rest: words.measures };
  }
  return {
    marks: [...planMarks(source, set.plan), ...set.marks],
    rest: restOf(words.measures, set.rows),
  };
}

/** On a plan that is smaller than this names and feet lie too close to be told apart: 1 to this. */
const SMALL_PLAN = 30;
/** It has to be worth a page of its own. */
const WORTH_A_PAGE = 1.5;

const isTooSmall = (scale: number, alone: number): boolean =>
  scale > SMALL_PLAN && scale > WORTH_A_PAGE * alone;

interface Division {
  readonly plan: Room;
  readonly marks: readonly Mark[];
  readonly rows: number;
}

/**
 * The table in the largest letters that cost nothing: with them all rows that the least leave room for have it, and the plan has the scale that it has
 * beside the least.
 */
function largestThatCostsNothing(source: SheetSource, inSize: (size: Mm) => Division): Division {
  const least = inSize(SMALLEST_TABLE);
  const drawn = sizeOf(drawingOf(source));
  const scaleOf = ({ plan }: Division): number => scaleFor(drawn, innerRoom(plan, source.seenFrom));
  const larger = TABLE_SIZES.filter((size) => size > SMALLEST_TABLE).map(inSize);
  const found = larger.find((set) => set.rows >= least.rows && scaleOf(set) <= scaleOf(least));
  return found ?? least;
}

/** What stands free below how to measure, over the table. */
const AFTER_HOW: Mm = 1;

function besideTable({ measures, howToMeasure }: SheetWords, body: Room, size: Mm): Division {
  const width = Math.min(naturalWidth(measures, size), body.width * 0.46);
  const room = { ...body, x: body.x + body.width - width, width };
  const how = paragraph(howToMeasure, room, { size });
  const over = how.height + AFTER_HOW;
  const below = { ...room, y: room.y + over, height: room.height - over };
  const { marks, rows } = setTable(measures, below, size);
  const plan = { ...body, width: body.width - width - GAP };
  return { plan, marks: [...how.marks, ...marks], rows };
}

/** In two columns of equal length, at the foot of the page. */
function belowTable({ measures, howToMeasure }: SheetWords, body: Room, size: Mm): Division {
  const width = (body.width - GAP) / 2;
  const how = paragraph(howToMeasure, body, { size });
  const over = how.height + AFTER_HOW;
  const most = body.height - LEAST_PLAN - over;
  const half = Math.ceil(measures.rows.length / 2);
  const column = (from: number, x: number, y: number): SetTable =>
    setTable(
      { ...measures, rows: measures.rows.slice(from, from + half) },
      { x, y, width, height: most },
      size,
    );
  // Set once to see how tall the columns are, then where they belong.
  const tried = column(0, body.x, 0);
  const height = Math.max(tried.height, column(tried.rows, body.x, 0).height);
  const y = body.y + body.height - height - 0.5;
  const left = column(0, body.x, y);
  const right = column(left.rows, body.x + width + GAP, y);
  const words = paragraph(howToMeasure, { ...body, y: y - over }, { size });
  return {
    plan: { ...body, height: body.height - height - over - 2 },
    marks: [...words.marks, ...left.marks, ...right.marks],
    rows: left.rows + right.rows,
  };
}

const drawingOf = ({ layout, report, words, seenFrom }: SheetSource): Drawing =>
  planDrawing(layout, report, seenFrom, words.forms);

const sizeOf = ({ high, low }: Drawing) => ({ width: high.x - low.x, height: high.y - low.y });

function planMarks(source: SheetSource, room: Room): readonly Mark[] {
  const { layout, words, seenFrom } = source;
  const drawing = drawingOf(source);
  const inner = innerRoom(room, seenFrom);
  const scale = scaleFor(sizeOf(drawing), inner);
  const onPaper = layOut(drawing, inner, scale);
  const around = aroundMarks(drawing, onPaper, { layout, words, seenFrom });
  const labels = drawing.labels.map(({ at, forms }) => ({ at: onPaper.point(at), forms }));
  const taken = around.flatMap((mark) => (mark.kind === 'text' ? [roomOf(mark)] : []));
  const labelled: Room = { ...room, height: room.height - BELOW };
  const laid = onPaper.marks(drawing.marks);
  return [
    ...laid,
    ...around,
    ...placeLargeLabels(labels, labelled, { taken, drawn: drawnPoints(laid) }),
    ...scaleMarks(room, scale, { layout, words, legend: words.legends.plan }),
  ];
}

/** Beside a ruler's caption, and where the audience is named. */
const CAPTION: Mm = 4;
const AUDIENCE: Mm = 5;

/** What rulers and words leave of a room: as the house sees it rulers stand at the top and the right, as the player does below and at the left. */
function innerRoom(room: Room, seenFrom: SeenFrom): Room {
  const rulers = RULER_ROOM + CAPTION;
  const isHouse = seenFrom === 'house';
  return {
    x: room.x + (isHouse ? 1 : RULER_ROOM + 1),
    y: room.y + (isHouse ? rulers : AUDIENCE),
    width: room.width - RULER_ROOM - 2,
    height: room.height - rulers - AUDIENCE - BELOW,
  };
}

/** Rulers from the two edges that are measured from, and where the audience is. */
function aroundMarks(
  { low, high }: Drawing,
  { point, scale }: OnPaper,
  { layout, words, seenFrom }: Pick<SheetSource, 'layout' | 'words' | 'seenFrom'>,
): readonly Mark[] {
  const { deck, units } = layout;
  const way = seenFrom === 'house' ? -1 : 1;
  const zero = point({ x: (-way * deck.width) / 2, y: (-way * deck.depth) / 2 });
  const [upper, lower] = [point(high), point(low)];
  const [left, right] = [lower.x - 1.5, upper.x + 1.5];
  const [top, foot] = [upper.y - 1.5, lower.y + 1.5];
  // As the house sees it, the player's left is at the right and the back of the deck at the top.
  const fromLeft = {
    zero: { x: zero.x, y: way < 0 ? top : foot },
    along: { x: way, y: 0 },
    out: { x: 0, y: way },
    length: deck.width,
  };
  const fromBack = {
    zero: { x: way < 0 ? right : left, y: zero.y },
    along: { x: 0, y: -way },
    out: { x: -way, y: 0 },
    length: deck.depth,
  };
  const middle = point({ x: 0, y: 0 }).x;
  const captions = { size: 2.6, anchor: 'middle', layer: 'DIMENSIONS' } as const;
  const below = (away: Mm): Mm => (way < 0 ? top - away : foot + away);
  const audience = way < 0 ? foot + SIDE_LETTERS * 1.4 : top - SIDE_LETTERS;
  return [
    ...rulerMarks(fromLeft, scale, units),
    ...rulerMarks(fromBack, scale, units),
    textMark(words.sides.rulers, { x: middle, y: below(way < 0 ? 5.6 : 6.8) }, captions),
    textMark(
      words.sides.audience,
      { x: middle, y: audience },
      { size: SIDE_LETTERS, bold: true, anchor: 'middle', layer: 'LABELS' },
    ),
  ];
}

/** Scale bar, scale and legend, at the foot of a drawing's room. */
export function scaleMarks(
  room: Room,
  scale: number,
  {
    layout,
    words,
    legend: text,
  }: Pick<SheetSource, 'layout' | 'words'> & { readonly legend: string },
): readonly Mark[] {
  const y = room.y + room.height - BELOW + 2;
  const scaleText = textMark(
    words.scale(scale),
    { x: room.x + room.width, y: y + ASCENT * 3.2 },
    { size: 3.2, bold: true, anchor: 'end' },
  );
  const below = { ...room, y: y + 6, height: BELOW - 8 };
  return [
    ...scaleBarMarks({ x: room.x + 1, y }, scale, layout.units),
    scaleText,
    ...smallParagraph(text, below),
  ];
}
