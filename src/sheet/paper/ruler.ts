import { type LengthUnit, showLengthNumber } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import { line, type Mark, type Point } from '../mark.ts';
import { rulerSteps } from './scale.ts';
import { textMark } from './text.ts';

/** A ruler on the paper: where its zero lies, which way it runs (a unit step along x or y), on which side its numbers stand. */
export interface Ruler {
  readonly zero: Point;
  readonly along: Point;
  readonly out: Point;
  /** What it measures, mm: from 0 to here. */
  readonly length: Mm;
}

const LETTERS: Mm = 2.6;
const TICK: Mm = 1;
const LONG_TICK: Mm = 1.7;

/** Room that a ruler beside a drawing takes. */
export const RULER_ROOM: Mm = 8;

/** A ruler with ticks and numbers in the unit shown. */
export function rulerMarks(
  { zero, along, out, length }: Ruler,
  scale: number,
  unit: LengthUnit,
): readonly Mark[] {
  const { tick, number } = rulerSteps(scale, unit);
  const at = (mm: Mm, away: Mm): Point => ({
    x: zero.x + (along.x * mm) / scale + out.x * away,
    y: zero.y + (along.y * mm) / scale + out.y * away,
  });
  const stroke = (from: Point, to: Point): Mark => ({
    kind: 'line',
    layer: 'DIMENSIONS',
    points: [from, to],
    closed: false,
    look: line(0.13),
  });
  const marks: Mark[] = [stroke(at(0, 0), at(length, 0))];
  for (let i = 0; i * tick <= length + 0.5; i += 1) {
    const mm = i * tick;
    const isLong = Math.abs(mm / number - Math.round(mm / number)) < 1e-6;
    marks.push(stroke(at(mm, 0), at(mm, isLong ? LONG_TICK : TICK)));
    if (isLong) marks.push(numberMark(showLengthNumber(mm, unit), at(mm, LONG_TICK + 0.5), out));
  }
  return marks;
}

function numberMark(text: string, at: Point, out: Point): Mark {
  const anchor = out.x > 0 ? 'start' : out.x < 0 ? 'end' : 'middle';
  const down = out.y > 0 ? 0.72 : out.y < 0 ? 0 : 0.36;
  const baseline = { x: at.x, y: at.y + down * LETTERS };
  return textMark(text, baseline, { size: LETTERS, anchor, layer: 'DIMENSIONS' });
}
