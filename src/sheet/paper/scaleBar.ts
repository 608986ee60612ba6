import { type LengthUnit, showLongLength } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';
import { filled, type Mark, type Point } from '../mark.ts';
import { barLength } from './scale.ts';
import { textMark } from './text.ts';

const BAR_HEIGHT: Mm = 1.4;
const PARTS = 10;
const LETTERS: Mm = 2.8;

/** How long the bar of a scale is: what it stands for, and on paper. */
export function barOf(
  scale: number,
  unit: LengthUnit,
): { readonly stands: Mm; readonly drawn: Mm } {
  const stands = barLength(scale, unit, 70);
  return { stands, drawn: stands / scale };
}

/** A scale bar in ten parts, black and white in turn, with its length at its ends. `at`: its upper left corner. */
export function scaleBarMarks(at: Point, scale: number, unit: LengthUnit): readonly Mark[] {
  const { stands, drawn } = barOf(scale, unit);
  const part = drawn / PARTS;
  const boxes = Array.from({ length: PARTS }, (_, i): Mark => {
    const [left, right] = [at.x + i * part, at.x + (i + 1) * part];
    const [top, low] = [at.y, at.y + BAR_HEIGHT];
    const points = [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: low },
      { x: left, y: low },
    ];
    const look = { ...filled(i % 2 === 0 ? 0 : 1, 0), ink: null };
    return { kind: 'line', layer: 'DIMENSIONS', points, closed: true, look };
  });
  // The outline lies inside the bar, so that the bar is exactly as long as it says.
  const half = 0.06;
  const outline: Mark = {
    kind: 'line',
    layer: 'DIMENSIONS',
    points: [
      { x: at.x + half, y: at.y + half },
      { x: at.x + drawn - half, y: at.y + half },
      { x: at.x + drawn - half, y: at.y + BAR_HEIGHT - half },
      { x: at.x + half, y: at.y + BAR_HEIGHT - half },
    ],
    closed: true,
    look: { ink: 0, width: 2 * half, fill: null, dash: [] },
  };
  const y = at.y + BAR_HEIGHT + 2.4;
  const word = (text: string, x: Mm): Mark => textMark(text, { x, y }, { size: LETTERS });
  return [
    ...boxes,
    outline,
    word('0', at.x),
    textMark(
      showLongLength(stands, unit),
      { x: at.x + drawn, y },
      { size: LETTERS, anchor: 'middle' },
    ),
  ];
}
