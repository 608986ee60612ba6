import type { Deck } from '../../layout/deck.ts';
import { fromInches } from '../../units/inch.ts';
import { type LengthUnit, showLengthNumber } from '../../units/lengthText.ts';
import type { Ink } from '../ink/ink.ts';
import type { Palette } from '../palette.ts';
import { toScreen, type View } from '../view/view.ts';
import { fillPath, type Pen, strokePath, traceLine, tracePolygon } from './pen.ts';

interface Ground {
  readonly deck: Pick<Deck, 'height'>;
  /** From where to where the deck reaches, mm. */
  readonly left: number;
  readonly right: number;
}

/** How thick a deck is drawn that has no height of its own, and how far the stage floor is drawn beside it, mm. */
const THIN = 20;
const BESIDE = 2000;

/** The deck in an elevation with the stage floor below it; its top is height 0. */
export function paintGround(pen: Pen, { deck, left, right }: Ground): void {
  const { colours } = pen;
  const low = -Math.max(deck.height, THIN);
  tracePolygon(pen, [
    { x: left, y: 0 },
    { x: right, y: 0 },
    { x: right, y: low },
    { x: left, y: low },
  ]);
  fillPath(pen, colours.hardwareFill);
  strokePath(pen, colours.deckEdge, 1.5);
  traceLine(pen, { x: left, y: 0 }, { x: right, y: 0 });
  strokePath(pen, colours.deckEdge, 2.5);
  if (deck.height > 0) {
    traceLine(pen, { x: left - BESIDE, y: low }, { x: right + BESIDE, y: low });
    strokePath(pen, colours.deckEdge, 1);
  }
}

/** Heights of the scale: a fine and a numbered step, round in the units shown. */
const steps: Readonly<Record<LengthUnit, { readonly fine: number; readonly numbered: number }>> = {
  mm: { fine: 100, numbered: 500 },
  in: { fine: fromInches(4), numbered: fromInches(20) },
};

const LONG = 12;
const SHORT = 6;
/** Numbers keep at least so many px from the screen's upper edge, and from its lower one over the scale bar and the line of names left out. */
const INSIDE = 22;
export const OVER_FOOT = 76;

interface HeightScale {
  readonly view: View;
  readonly unit: LengthUnit;
  readonly font: string;
}

/** Lines across the drawing at round heights, and their numbers at the left edge of the screen (screen px). */
export function paintHeights(
  canvas: Ink,
  { view, unit, font }: HeightScale,
  colours: Palette,
): void {
  const { fine, numbered } = steps[unit];
  const highest = view.centre.y + view.size.height / 2 / view.scale;
  canvas.font = font;
  canvas.textAlign = 'left';
  canvas.textBaseline = 'middle';
  canvas.lineJoin = 'round';
  const every = fine * view.scale >= SHORT ? fine : numbered;
  for (let height = 0; height <= highest; height += every) {
    const { y } = toScreen(view, { x: 0, y: height });
    const whole = Math.abs(height / numbered - Math.round(height / numbered)) < 1e-6;
    level(canvas, y, whole ? view.size.width : SHORT);
    canvas.strokeStyle = whole ? colours.gridStrong : colours.centreLine;
    canvas.lineWidth = 1;
    canvas.stroke();
    if (!whole || y < INSIDE || y > view.size.height - OVER_FOOT) continue;
    level(canvas, y, LONG);
    canvas.strokeStyle = colours.inkSoft;
    canvas.lineWidth = 1.5;
    canvas.stroke();
    const text = showLengthNumber(height, unit);
    canvas.strokeStyle = colours.halo;
    canvas.lineWidth = 4;
    canvas.strokeText(text, LONG + 5, y);
    canvas.fillStyle = colours.inkSoft;
    canvas.fillText(text, LONG + 5, y);
  }
}

function level(canvas: Ink, y: number, to: number): void {
  canvas.beginPath();
  canvas.moveTo(0, y);
  canvas.lineTo(to, y);
}
