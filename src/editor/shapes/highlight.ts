import type { Outline } from '../pick/outline.ts';
import { type Pen, strokePath } from './pen.ts';
import { traceTiltedDisc } from './tiltedDisc.ts';
import { tracePolygon } from './pen.ts';

/** The outline of what is selected, in the colour of selection on a dark edge, drawn just outside the thing. */
export function paintHighlight(pen: Pen, outline: Outline): void {
  const out = 3 * pen.px;
  trace(pen, outline, out);
  pen.canvas.lineJoin = 'round';
  strokePath(pen, pen.colours.halo, 5);
  trace(pen, outline, out);
  strokePath(pen, pen.colours.selected, 2.5);
}

function trace(pen: Pen, outline: Outline, out: number): void {
  switch (outline.kind) {
    case 'disc':
      traceTiltedDisc(pen, { ...outline.disc, radius: outline.disc.radius + out });
      return;
    case 'area':
      tracePolygon(pen, outline.ring);
      return;
    case 'line':
      traceRoundedLine(pen, outline, outline.radius + out);
  }
}

/** A line with a width and round ends, as a closed path. */
function traceRoundedLine(
  pen: Pen,
  { a, b }: Extract<Outline, { kind: 'line' }>,
  radius: number,
): void {
  const way = Math.atan2(b.y - a.y, b.x - a.x);
  pen.canvas.beginPath();
  pen.canvas.arc(b.x, b.y, radius, way - Math.PI / 2, way + Math.PI / 2);
  pen.canvas.arc(a.x, a.y, radius, way + Math.PI / 2, way + 1.5 * Math.PI);
  pen.canvas.closePath();
}
