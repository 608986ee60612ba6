import { along, type Vec3, vec } from '../../geometry/vector.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { kickFrame, portCentre } from '../../rig/pieces/kickFrame.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import { apart, fillPath, type Pen, strokePath, traceLine, tracePolygon } from './pen.ts';
import { traceTiltedDisc } from './tiltedDisc.ts';

/**
 * Kick drum from above: the shell see-through, so that a mic inside it shows; a hoop at each end at its true width; both heads
 * as lines, the front one open where the port is.
 */
export function paintKick(pen: Pen, kick: Kick): void {
  const { colours } = pen;
  const { front, right, frontHead, backHead } = kickFrame(kick);
  const radius = kick.diameter / 2;
  apart(pen, () => {
    pen.canvas.globalAlpha = 0.75;
    traceBand(pen, [backHead, frontHead], right, radius);
    fillPath(pen, colours.head);
  });
  strokePath(pen, colours.hoop, 1.25);
  for (const [head, outward] of [
    [frontHead, front],
    [backHead, vec(-front.x, -front.y, -front.z)],
  ] as const) {
    if (kick.rise !== 0) {
      traceTiltedDisc(pen, { centre: head, normal: front, radius });
      fillPath(pen, colours.shell);
    }
    paintHoop(pen, kick, { head, outward, right });
  }
  paintPort(pen, kick);
}

function traceBand(pen: Pen, ends: readonly [Vec3, Vec3], right: Vec3, half: number): void {
  const [a, b] = ends;
  tracePolygon(pen, [
    along(a, right, half),
    along(b, right, half),
    along(b, right, -half),
    along(a, right, -half),
  ]);
}

interface End {
  readonly head: Vec3;
  readonly outward: Vec3;
  readonly right: Vec3;
}

function paintHoop(pen: Pen, kick: Kick, { head, outward, right }: End): void {
  const radius = kick.diameter / 2;
  traceBand(
    pen,
    [head, along(head, outward, Math.max(kick.rim.height, 3 * pen.px))],
    right,
    radius + kick.rim.width,
  );
  fillPath(pen, pen.colours.shell);
  strokePath(pen, pen.colours.hoop, 1.5);
}

/** The port: the front head's line opened between two ticks, where the audience sees the hole. */
function paintPort(pen: Pen, kick: Kick): void {
  if (kick.port === null) return;
  const frame = kickFrame(kick);
  const middle = portCentre(kick, frame);
  const half = kick.port.diameter / 2;
  const ends = [along(middle, frame.right, half), along(middle, frame.right, -half)] as const;
  const flat = vec(cosDeg(kick.turn), sinDeg(kick.turn), 0);
  const reach = Math.max(kick.rim.height, 3 * pen.px);
  const [a, b] = ends;
  tracePolygon(pen, [
    along(a, flat, -pen.px),
    along(b, flat, -pen.px),
    along(b, flat, reach + 1.5 * pen.px),
    along(a, flat, reach + 1.5 * pen.px),
  ]);
  fillPath(pen, pen.colours.deck);
  for (const end of ends) {
    traceLine(pen, along(end, flat, -6 * pen.px), along(end, flat, reach + 3 * pen.px));
    strokePath(pen, pen.colours.hoop, 2);
  }
}
