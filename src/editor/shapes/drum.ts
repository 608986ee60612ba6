import type { Drum } from '../../layout/pieces/drum.ts';
import { surfaceOf } from '../../rig/surface.ts';
import { fillPath, type Pen, strokePath, strokeThick } from './pen.ts';
import { resized, traceShellBelow, traceTiltedDisc } from './tiltedDisc.ts';

/** Snare and toms: the shell where a lean shows it, the head, the hoop at its true width. */
export function paintDrum(pen: Pen, drum: Drum): void {
  const { colours } = pen;
  const head = surfaceOf(drum);
  const hoop = resized(head, head.radius + drum.rim.width / 2);
  traceShellBelow(pen, head, drum.depth);
  fillPath(pen, colours.shell);
  strokePath(pen, colours.hoop, 1);
  traceTiltedDisc(pen, head);
  fillPath(pen, colours.head);
  traceTiltedDisc(pen, hoop);
  strokeThick(pen, colours.hoop, drum.rim.width * 0.6, 1.5);
  if (drum.kind === 'snare') {
    traceTiltedDisc(pen, resized(head, head.radius * 0.9));
    strokePath(pen, colours.shell, 1.5);
  }
}
