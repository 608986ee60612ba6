import type { FloorReport } from '../../report/floor.ts';
import type { Mm } from '../../units/quantity.ts';
import { apart, type Pen, strokePath } from './pen.ts';

/** Every so many contours one is strong, as on a map. */
const STRONG_EVERY = 5;

/** Whether the contour of a height is a strong one. */
export const isStrong = (height: Mm, step: Mm): boolean =>
  Math.round(height / step) % STRONG_EVERY === 0;

/** The stick floor as height contours (kit frame). */
export function paintContours(pen: Pen, { contours, step }: FloorReport): void {
  const { canvas, colours } = pen;
  apart(pen, () => {
    canvas.lineJoin = 'round';
    for (const { height, rings } of contours) {
      canvas.beginPath();
      for (const ring of rings) {
        for (const [i, { x, y }] of ring.entries()) {
          if (i === 0) canvas.moveTo(x, y);
          else canvas.lineTo(x, y);
        }
        canvas.closePath();
      }
      const strong = isStrong(height, step);
      canvas.globalAlpha = 0.7;
      strokePath(pen, colours.halo, strong ? 4.5 : 3);
      canvas.globalAlpha = 1;
      strokePath(pen, colours.contour, strong ? 2.25 : 1.1);
    }
  });
}
