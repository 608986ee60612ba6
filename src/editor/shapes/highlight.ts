import type { Outline } from '../pick/outline.ts';
import { addLine, apart, type Pen } from './pen.ts';
import { addTiltedDisc } from './tiltedDisc.ts';

/** Px from a thing's edge to the inner and outer edge of its highlight, and to the edge of the dark line round it. */
const INNER = 1.5;
const OUTER = 4;
const EDGE = 6;

/**
 * The outline of what is selected, round all its parts at once. Drawn wide and then cleared inside, so it must come first on a
 * layer of its own: what lies on the layers below shows through.
 */
export function paintHighlight(pen: Pen, outlines: readonly Outline[]): void {
  const { canvas, colours } = pen;
  apart(pen, () => {
    canvas.lineCap = 'round';
    canvas.lineJoin = 'round';
    for (const [colour, out] of [
      [colours.halo, EDGE],
      [colours.selected, OUTER],
    ] as const) {
      for (const outline of outlines) cover(pen, outline, out, colour);
    }
    canvas.globalCompositeOperation = 'destination-out';
    for (const outline of outlines) cover(pen, outline, INNER, colours.selected);
  });
}

/** Covers an outline and `out` px round it. */
function cover(pen: Pen, outline: Outline, out: number, colour: string): void {
  const { canvas, px } = pen;
  canvas.beginPath();
  canvas.strokeStyle = colour;
  canvas.fillStyle = colour;
  switch (outline.kind) {
    case 'disc':
      addTiltedDisc(pen, { ...outline.disc, radius: outline.disc.radius + out * px });
      canvas.fill();
      return;
    case 'area':
      addLine(pen, outline.ring);
      canvas.closePath();
      canvas.fill();
      canvas.lineWidth = 2 * out * px;
      canvas.stroke();
      return;
    case 'line':
      addLine(pen, [outline.a, outline.b]);
      canvas.lineWidth = 2 * (outline.radius + out * px);
      canvas.stroke();
  }
}
