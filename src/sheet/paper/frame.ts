import type { Mm } from '../../units/quantity.ts';
import { line, type Mark, type Page } from '../mark.ts';
import type { Room } from './layOut.ts';
import { ASCENT, textWidth } from './lettering.ts';
import { PAPER_MARGIN, type Paper, paperExtent } from './paper.ts';
import { sizeFor, smallParagraph, textMark } from './text.ts';

/** What stands round every page. */
export interface FrameWords {
  readonly name: string;
  readonly about: string;
  readonly title: string;
  readonly page: string;
  readonly caution: string;
}

const HEAD: Mm = 13;
const FOOT: Mm = 8;
const PAGE: Mm = 2.8;
const NAME_SIZES = [4.6, 3.8, 3.2, 2.8, 2.4, 2, 1.7] as const;
const ABOUT_SIZES = [2.8, 2.4, 2, 1.7, 1.4] as const;
/** Between the left and the right half of the head. */
const GAP: Mm = 6;

/** The room of a page inside its head and foot. */
export function bodyRoom(paper: Paper): Room {
  const { width, height } = paperExtent(paper);
  return {
    x: PAPER_MARGIN,
    y: PAPER_MARGIN + HEAD,
    width: width - 2 * PAPER_MARGIN,
    height: height - 2 * PAPER_MARGIN - HEAD - FOOT,
  };
}

/** A page: what stands in its body, with head and foot round it. */
export function framed(paper: Paper, body: readonly Mark[], words: FrameWords): Page {
  const extent = paperExtent(paper);
  return { ...extent, marks: [...body, ...headMarks(words, extent), ...footMarks(words, extent)] };
}

interface Extent {
  readonly width: Mm;
  readonly height: Mm;
}

function headMarks(words: FrameWords, { width }: Extent): readonly Mark[] {
  const [left, right] = [PAPER_MARGIN, width - PAPER_MARGIN];
  const ofTitle = Math.max(textWidth(words.title, 4, true), textWidth(words.page, PAGE));
  const room = right - left - ofTitle - GAP;
  const nameSize = sizeFor(words.name, room, NAME_SIZES, true);
  const aboutSize = sizeFor(words.about, room, ABOUT_SIZES, false);
  const upper = PAPER_MARGIN + 4.6 * ASCENT;
  const lower = PAPER_MARGIN + 9;
  return [
    textMark(words.name, { x: left, y: upper }, { size: nameSize, bold: true }),
    ...(words.about === ''
      ? []
      : [textMark(words.about, { x: left, y: lower }, { size: aboutSize })]),
    textMark(words.title, { x: right, y: upper }, { size: 4, bold: true, anchor: 'end' }),
    textMark(words.page, { x: right, y: lower }, { size: PAGE, anchor: 'end' }),
    across(left, right, PAPER_MARGIN + 11, 0.4),
  ];
}

function footMarks({ caution }: FrameWords, { width, height }: Extent): readonly Mark[] {
  const [left, right] = [PAPER_MARGIN, width - PAPER_MARGIN];
  const y = height - PAPER_MARGIN - FOOT + 1.4;
  const room = { x: left, y: y + 0.7, width: right - left, height: FOOT - 2 };
  return [across(left, right, y, 0.15), ...smallParagraph(caution, room)];
}

const across = (left: Mm, right: Mm, y: Mm, thickness: Mm): Mark => ({
  kind: 'line',
  layer: 'FRAME',
  points: [
    { x: left, y },
    { x: right, y },
  ],
  closed: false,
  look: line(thickness),
});
