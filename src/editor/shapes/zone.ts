import type { Vec2 } from '../../geometry/vector.ts';
import { addLine, apart, fillPath, type Pen, strokePath, traceLine } from './pen.ts';

/** Screen distance between the lines of the hatch, px. */
const SPACING = 9;

/** Forbidden ground: hatched inside rings and holes (even-odd), with a firm edge. */
export function paintZone(pen: Pen, rings: readonly (readonly Vec2[])[]): void {
  const all = rings.flat();
  if (all.length === 0) return;
  const { canvas, colours, px } = pen;
  const trace = (): void => {
    canvas.beginPath();
    for (const ring of rings) {
      addLine(pen, ring);
      canvas.closePath();
    }
  };
  apart(pen, () => {
    trace();
    canvas.clip('evenodd');
    canvas.globalAlpha = 0.07;
    trace();
    fillPath(pen, colours.zone);
    canvas.globalAlpha = 0.38;
    hatch(pen, all, SPACING * px);
  });
  trace();
  canvas.lineJoin = 'round';
  strokePath(pen, colours.zone, 1.5);
}

function hatch(pen: Pen, spots: readonly Vec2[], step: number): void {
  const sums = spots.map((spot) => spot.x + spot.y);
  const differences = spots.map((spot) => spot.x - spot.y);
  const low = Math.min(...differences);
  const high = Math.max(...differences);
  const diagonal = step * Math.SQRT2;
  const last = Math.max(...sums);
  // Lines start at whole steps of the frame, so that the hatch stands still while the zone changes.
  for (let sum = Math.ceil(Math.min(...sums) / diagonal) * diagonal; sum <= last; sum += diagonal) {
    traceLine(
      pen,
      { x: (sum + low) / 2, y: (sum - low) / 2 },
      { x: (sum + high) / 2, y: (sum - high) / 2 },
    );
    strokePath(pen, pen.colours.zone, 1);
  }
}
