import type { Mm } from '../../units/quantity.ts';
import type { Mark } from '../mark.ts';
import type { Room } from '../paper/layOut.ts';
import {
  cutToRoom,
  restOf,
  type SheetTable,
  SMALLEST_TABLE,
  setTable,
  TABLE_SIZES,
} from '../paper/table.ts';
import { paragraph } from '../paper/text.ts';

/** A part of a sheet that runs on from page to page. */
export type Flowing =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'table'; readonly table: SheetTable }
  /** Lines to write on, each with its label. */
  | { readonly kind: 'blanks'; readonly labels: readonly string[] };

/** Headings are larger than the letters below them by this. */
const HEADING = 1.25;
const BLANK: Mm = 8;
/** After every part. */
const AFTER: Mm = 2.5;
/** A heading is not left alone at the foot of a page: this much must follow it. */
const FOLLOWS: Mm = 12;

/**
 * Sets parts one below the other in the largest letters that take one page; where none do, in the smallest, onto as many as they take. `least`:
 * no letters smaller than these.
 */
export function flowedBodies(
  parts: readonly Flowing[],
  body: Room,
  least: Mm = SMALLEST_TABLE,
): readonly (readonly Mark[])[] {
  for (const size of TABLE_SIZES.filter((each) => each >= least)) {
    const pages = flowedIn(parts, body, size);
    if (pages.length === 1) return pages;
  }
  return flowedIn(parts, body, least);
}

function flowedIn(parts: readonly Flowing[], body: Room, size: Mm): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let y = body.y;
  const put = (marks: readonly Mark[], height: Mm): void => {
    pages.at(-1)?.push(...marks);
    y += height + AFTER;
  };
  const turnPage = (): void => {
    pages.push([]);
    y = body.y;
  };
  for (const part of parts) {
    if (part.kind === 'table') {
      let table: SheetTable | null = cutToRoom(part.table, body, size);
      while (table) {
        const set = setTable(table, { ...body, y, height: body.y + body.height - y }, size);
        // On a page of its own every row fits (W2).
        if (set.rows === 0 && table.rows.length > 0 && y > body.y) {
          turnPage();
          continue;
        }
        put(set.marks, set.height);
        table = restOf(table, Math.max(1, set.rows));
        if (table) turnPage();
      }
      continue;
    }
    const needed = part.kind === 'heading' ? FOLLOWS : 0;
    const set = setPart(part, { ...body, y }, size);
    if (y + set.height + needed > body.y + body.height && y > body.y) {
      turnPage();
      const again = setPart(part, { ...body, y }, size);
      put(again.marks, again.height);
    } else put(set.marks, set.height);
  }
  return pages;
}

function setPart(
  part: Exclude<Flowing, { readonly kind: 'table' }>,
  room: Room,
  size: Mm,
): { readonly marks: readonly Mark[]; readonly height: Mm } {
  if (part.kind === 'heading')
    return paragraph(part.text, room, { size: HEADING * size, bold: true });
  if (part.kind === 'text') return paragraph(part.text, room, { size });
  const width = room.width / part.labels.length;
  const marks = part.labels.flatMap((label, i): readonly Mark[] => {
    const x = room.x + i * width;
    const y = room.y + BLANK;
    const under: Mark = {
      kind: 'line',
      layer: 'FRAME',
      points: [
        { x, y },
        { x: x + width - 4, y },
      ],
      closed: false,
      look: { ink: 0, width: 0.15, fill: null, dash: [] },
    };
    const words = paragraph(label, { x, y: y + 0.8, width: width - 4, height: 4 }, { size: 2.8 });
    return [under, ...words.marks];
  });
  return { marks, height: BLANK + 4 };
}
