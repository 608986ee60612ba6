import type { Vec2, Vec3 } from '../../geometry/vector.ts';
import type { Ink } from '../ink/ink.ts';
import type { Palette } from '../palette.ts';

/**
 * What a painter draws with: a canvas whose unit is the mm and whose y points up the plan, and how many mm one px of the
 * screen covers, so that lines keep their weight at every zoom.
 */
export interface Pen {
  readonly canvas: Ink;
  readonly px: number;
  readonly colours: Palette;
}

/** A pen in px of the screen. */
export type ScreenPen = Pick<Pen, 'canvas' | 'colours'>;

type Spot = Vec2 | Vec2<'deck'> | Vec3;

export const FULL_TURN = 2 * Math.PI;

export function strokePath(pen: Pen, colour: string, widthPx: number): void {
  pen.canvas.strokeStyle = colour;
  pen.canvas.lineWidth = widthPx * pen.px;
  pen.canvas.stroke();
}

/** A line as wide as the thing itself, but never thinner than `leastPx`. */
export function strokeThick(pen: Pen, colour: string, width: number, leastPx: number): void {
  pen.canvas.strokeStyle = colour;
  pen.canvas.lineWidth = Math.max(width, leastPx * pen.px);
  pen.canvas.stroke();
}

export function fillPath(pen: Pen, colour: string): void {
  pen.canvas.fillStyle = colour;
  pen.canvas.fill();
}

export function traceLine(pen: Pen, ...spots: readonly Spot[]): void {
  pen.canvas.beginPath();
  addLine(pen, spots);
}

/** A canvas leaves out a line without length, ends and all: what is seen end on would vanish, mm. */
const LEAST_LENGTH = 0.5;

/** Adds an open line to the path. */
export function addLine(pen: Pen, spots: readonly Spot[]): void {
  let last: Spot | undefined;
  for (const spot of spots) {
    if (!last) pen.canvas.moveTo(spot.x, spot.y);
    else if (Math.hypot(spot.x - last.x, spot.y - last.y) < LEAST_LENGTH) {
      pen.canvas.lineTo(last.x + LEAST_LENGTH, last.y);
    } else pen.canvas.lineTo(spot.x, spot.y);
    last = spot;
  }
}

export function tracePolygon(pen: Pen, spots: readonly Spot[]): void {
  traceLine(pen, ...spots);
  pen.canvas.closePath();
}

export function traceDisc(pen: Pen, centre: Spot, radius: number): void {
  pen.canvas.beginPath();
  pen.canvas.arc(centre.x, centre.y, radius, 0, FULL_TURN);
}

/** Draws with the canvas's settings put back afterwards. */
export function apart(pen: Pen, draw: () => void): void {
  pen.canvas.save();
  draw();
  pen.canvas.restore();
}
