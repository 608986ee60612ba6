import type { Vec2 } from '../../geometry/vector.ts';
import type { Outline } from '../pick/outline.ts';
import { addLine, apart, type Pen, strokePath } from './pen.ts';
import { traceTiltedDisc } from './tiltedDisc.ts';

/** What is thinner is one line along its middle: a boom's two edges would run together, mm. */
const THIN = 16;

/** Least radius of what is drawn round, px: dashes need room to be seen as such. */
const LEAST = 5;

/** Dash and gap, px: shorter than those of anything else that is broken. */
const DASH = [5, 4] as const;

/** Where a thing is now, while it is shown elsewhere: a broken outline with nothing inside. */
export function paintGhosts(pen: Pen, outlines: readonly Outline[]): void {
  const { canvas, colours, px } = pen;
  apart(pen, () => {
    canvas.lineCap = 'butt';
    for (const outline of outlines) {
      trace(pen, outline);
      strokePath(pen, colours.halo, 4.5);
    }
    canvas.setLineDash(DASH.map((length) => length * px));
    for (const outline of outlines) {
      trace(pen, outline);
      strokePath(pen, colours.ink, 2);
    }
  });
}

function trace(pen: Pen, outline: Outline): void {
  if (outline.kind === 'disc') {
    traceTiltedDisc(pen, outline.disc);
    return;
  }
  pen.canvas.beginPath();
  if (outline.kind === 'line' && outline.radius >= THIN) {
    addCapsule(pen, outline.a, outline.b, Math.max(outline.radius, LEAST * pen.px));
    return;
  }
  addLine(pen, outline.kind === 'line' ? [outline.a, outline.b] : outline.ring);
  if (outline.kind === 'area') pen.canvas.closePath();
}

/** Adds the outline of what reaches as far from a stretch. */
function addCapsule({ canvas }: Pen, a: Vec2, b: Vec2, reach: number): void {
  const way = Math.atan2(b.y - a.y, b.x - a.x);
  canvas.arc(a.x, a.y, reach, way + Math.PI / 2, way + (3 * Math.PI) / 2);
  canvas.arc(b.x, b.y, reach, way - Math.PI / 2, way + Math.PI / 2);
  canvas.closePath();
}
