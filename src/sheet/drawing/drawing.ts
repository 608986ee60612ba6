import type { Mm } from '../../units/quantity.ts';
import type { Mark, Point } from '../mark.ts';

/** What a label on a drawing says: the fullest form first. */
export interface LabelWish {
  readonly at: Point;
  /** Of what it names, as it is seen: a label stays off the middle of small things. */
  readonly forms: readonly string[];
}

/** A drawing to its true size, mm: y up the sheet. */
export interface Drawing {
  readonly marks: readonly Mark[];
  readonly labels: readonly LabelWish[];
  readonly low: Point;
  readonly high: Point;
}

/** The room that marks take. */
export function extentOf(marks: readonly Mark[]): { readonly low: Point; readonly high: Point } {
  let [lowX, lowY, highX, highY] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = ({ x, y }: Point, out: Mm): void => {
    lowX = Math.min(lowX, x - out);
    lowY = Math.min(lowY, y - out);
    highX = Math.max(highX, x + out);
    highY = Math.max(highY, y + out);
  };
  for (const mark of marks) {
    if (mark.kind === 'line') for (const point of mark.points) take(point, 0);
    else if (mark.kind === 'circle') take(mark.centre, mark.radius);
    else take(mark.at, 0);
  }
  return { low: { x: lowX, y: lowY }, high: { x: highX, y: highY } };
}
