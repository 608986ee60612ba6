import type { LengthUnit } from '../../units/lengthText.ts';
import type { Ink } from '../ink/ink.ts';
import type { Palette, Verdict } from '../palette.ts';
import { verdictWords } from '../words.ts';
import { paintPlate } from './plate.ts';
import { paintVerdictMark } from './verdictMark.ts';

interface LegendPlace {
  readonly x: number;
  readonly y: number;
  /** Room to the right, px: without enough of it the legend is left out. */
  readonly room: number;
  readonly font: string;
  readonly unit: LengthUnit;
}

const ORDER: readonly Verdict[] = ['clear', 'tight', 'struck'];
const MARK = 14;

/** What the verdicts' marks mean and in what unit their numbers are (screen px). */
export function paintLegend(
  canvas: Ink,
  { x, y, room, font, unit }: LegendPlace,
  colours: Palette,
): void {
  canvas.font = font;
  canvas.textAlign = 'left';
  canvas.textBaseline = 'middle';
  const words = [
    ...ORDER.map((verdict) => verdictWords[verdict]),
    unit === 'mm' ? 'clearance in mm' : 'clearance in inches',
  ];
  const widths = words.map((word) => canvas.measureText(word).width);
  const whole = widths.reduce((sum, width) => sum + width, 0) + 3 * (MARK + 18) + 4;
  if (whole > room) return;
  paintPlate(canvas, { left: x - 8, top: y - 14, width: whole + 16, height: 28 }, colours);
  let at = x;
  for (const [i, word] of words.entries()) {
    const verdict = ORDER[i];
    if (verdict) {
      paintVerdictMark(canvas, verdict, { x: at + MARK / 2, y, size: MARK }, colours);
      at += MARK + 5;
    }
    canvas.fillStyle = colours.inkSoft;
    canvas.fillText(word, at, y + 0.5);
    at += (widths[i] ?? 0) + 13;
  }
}
