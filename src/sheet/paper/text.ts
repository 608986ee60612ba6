import type { Mm } from '../../units/quantity.ts';
import type { Point, TextMark } from '../mark.ts';
import type { Room } from './layOut.ts';
import { ASCENT, DESCENT, textWidth, wrapped } from './lettering.ts';

interface Lettered {
  readonly size: Mm;
  readonly bold?: boolean;
  readonly anchor?: TextMark['anchor'];
  readonly ink?: number;
  readonly layer?: TextMark['layer'];
}

/** One line of text on its baseline. */
export const textMark = (
  text: string,
  at: Point,
  { size, bold = false, anchor = 'start', ink = 0, layer = 'FRAME' }: Lettered,
): TextMark => ({ kind: 'text', layer, at, text, size, anchor, bold, ink });

/** From baseline to baseline, in parts of the size. */
export const LEADING = 1.3;

/** A paragraph from the upper edge of a room, broken at its width; how far down it reaches. */
export function paragraph(
  text: string,
  room: Room,
  lettered: Lettered,
): { readonly marks: readonly TextMark[]; readonly height: Mm } {
  const { size, bold = false } = lettered;
  const lines = wrapped(text, room.width, size, bold);
  const marks = lines.map((each, i) =>
    textMark(each, { x: room.x, y: room.y + ASCENT * size + i * LEADING * size }, lettered),
  );
  return { marks, height: ((lines.length - 1) * LEADING + ASCENT + DESCENT) * size };
}

/** Letters of what is small on a sheet, mm: 8 points, and less where that finds no room. */
const SMALL_SIZES = [2.8, 2.6, 2.4, 2.2, 2] as const;

/** A paragraph in the largest small letters in which it is no taller than its room; in the least where it never is. */
export function smallParagraph(text: string, room: Room): readonly TextMark[] {
  const set = SMALL_SIZES.map((size) => paragraph(text, room, { size }));
  return (set.find(({ height }) => height <= room.height) ?? set.at(-1))?.marks ?? [];
}

/** The largest of some sizes in which a text is no longer than a width; the last one where none is. */
export const sizeFor = (text: string, width: Mm, sizes: readonly Mm[], bold: boolean): Mm =>
  sizes.find((size) => textWidth(text, size, bold) <= width) ?? sizes.at(-1) ?? 2;

/** The paper that a line of text takes. */
export function roomOf({ at, text, size, bold, anchor }: TextMark): Room {
  const width = textWidth(text, size, bold);
  const x = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2;
  return { x, y: at.y - ASCENT * size, width, height: (ASCENT + DESCENT) * size };
}
