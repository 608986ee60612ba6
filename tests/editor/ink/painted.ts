import { createCanvas, type SKRSContext2D } from '@napi-rs/canvas';
import type { Measure } from '../../../src/editor/labels/lettering.ts';

/** A canvas that is not the browser's, in px of the screen. */
export function newSheet(width: number, height: number, ratio = 1) {
  const canvas = createCanvas(width * ratio, height * ratio);
  const pen = canvas.getContext('2d');
  pen.scale(ratio, ratio);
  return { canvas, pen, ink: asBrowsers(pen) };
}

/** The other canvas has all that painters and recordings use. */
export const asBrowsers = (pen: SKRSContext2D): CanvasRenderingContext2D =>
  pen as unknown as CanvasRenderingContext2D;

const measuring = createCanvas(1, 1).getContext('2d');

export const measure: Measure = (text, font) => {
  measuring.font = font;
  return measuring.measureText(text).width;
};
