import { fromInches } from '../../units/inch.ts';
import { type LengthUnit, showLongLength } from '../../units/lengthText.ts';
import type { Ink } from '../ink/ink.ts';
import type { Palette } from '../palette.ts';
import type { ScreenPoint } from '../view/view.ts';
import { paintPlate } from './plate.ts';

/** A round length and how it is written. */
export interface ScaleLength {
  readonly length: number;
  readonly text: string;
}

const metric: readonly number[] = [20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];
const inches: readonly number[] = [1, 2, 4, 6, 12, 24, 48, 96, 240, 480];

/** The longest round length that is at most `most` px long; the shortest one where none is. */
export function scaleLength(pxPerMm: number, most: number, unit: LengthUnit): ScaleLength {
  const lengths = unit === 'mm' ? metric : inches.map(fromInches);
  const fitting = lengths.filter((length) => length * pxPerMm <= most);
  const length = fitting.at(-1) ?? lengths[0] ?? 0;
  return { length, text: textOf(length, unit) };
}

function textOf(length: number, unit: LengthUnit): string {
  if (unit === 'mm') return length < 1000 ? `${length} mm` : showLongLength(length, unit);
  const whole = Math.round(length / fromInches(1));
  return whole < 12 ? `${whole} in` : `${whole / 12} ft`;
}

interface BarPlace {
  /** Left end of the bar, px. */
  readonly at: ScreenPoint;
  readonly pxPerMm: number;
  readonly unit: LengthUnit;
  readonly font: string;
}

/** A bar of five parts with its length over it (screen px), on a plate like the legend: edges of decks and stage floors run on under it. */
export function paintScaleBar(
  canvas: Ink,
  { at, pxPerMm, unit, font }: BarPlace,
  colours: Palette,
): void {
  const { length, text } = scaleLength(pxPerMm, 180, unit);
  const width = length * pxPerMm;
  const height = 6;
  canvas.font = font;
  const wide = Math.max(width, canvas.measureText(text).width);
  const plate = { left: at.x - 6, top: at.y - 23, width: wide + 12, height: 23 + height + 5 };
  paintPlate(canvas, plate, colours);
  for (let part = 0; part < 5; part += 1) {
    canvas.fillStyle = part % 2 === 0 ? colours.ink : colours.halo;
    canvas.fillRect(at.x + (part * width) / 5, at.y, width / 5, height);
  }
  canvas.strokeStyle = colours.ink;
  canvas.lineWidth = 1;
  canvas.strokeRect(at.x, at.y, width, height);
  canvas.textAlign = 'left';
  canvas.textBaseline = 'alphabetic';
  canvas.lineJoin = 'round';
  canvas.strokeStyle = colours.halo;
  canvas.lineWidth = 4;
  canvas.strokeText(text, at.x, at.y - 7);
  canvas.fillStyle = colours.ink;
  canvas.fillText(text, at.x, at.y - 7);
}
