import type { Capsule } from '../../geometry/capsule.ts';
import type { Figure } from '../../report/figure.ts';
import {
  addLine,
  apart,
  FULL_TURN,
  fillPath,
  type Pen,
  strokePath,
  strokeThick,
  traceLine,
} from './pen.ts';

/** The player from above with arms at rest: legs, arms, shoulders, head (kit frame). */
export function paintPlayer(pen: Pen, figure: Figure): void {
  apart(pen, () => {
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    for (const { thigh, shin } of figure.legs) paintLimb(pen, [shin, thigh]);
    for (const arm of figure.arms) paintLimb(pen, arm);
    paintLimb(pen, [figure.shoulders]);
    paintHead(pen, figure.head, figure.head.length / 2);
  });
}

/** The turned player with arms at rest: trunk, legs, arms, head. */
export function paintUprightPlayer(pen: Pen, figure: Figure): void {
  apart(pen, () => {
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    paintLimb(pen, [figure.trunk, figure.shoulders]);
    for (const { thigh, shin } of figure.legs) paintLimb(pen, [shin, thigh]);
    for (const arm of figure.arms) paintLimb(pen, arm);
    paintHead(pen, figure.head, figure.head.height / 2);
  });
}

function paintHead(pen: Pen, { centre, breadth }: Figure['head'], half: number): void {
  pen.canvas.beginPath();
  pen.canvas.ellipse(centre.x, centre.y, breadth / 2, half, 0, 0, FULL_TURN);
  fillPath(pen, pen.colours.bodyInside);
  pen.canvas.globalAlpha = 0.7;
  strokePath(pen, pen.colours.body, 1.25);
}

/** A limb with one edge round all its parts: thick lines, and the same a little thinner in the ground's colour. */
export function paintLimb(pen: Pen, parts: readonly Capsule[]): void {
  const { canvas, colours, px } = pen;
  for (const [colour, alpha, less] of [
    [colours.body, 0.55, 0],
    [colours.bodyInside, 1, 2.2],
  ] as const) {
    canvas.globalAlpha = alpha;
    for (const { a, b, radius } of parts) {
      traceLine(pen, a, b);
      strokeThick(pen, colour, 2 * radius - less * px, less === 0 ? 4 : 2);
    }
  }
  canvas.globalAlpha = 1;
}

/** The parts of the player that are nearest to a mic, marked as what moves. */
export function paintLeg(pen: Pen, parts: readonly Capsule[]): void {
  const { canvas, colours } = pen;
  apart(pen, () => {
    canvas.lineCap = 'round';
    canvas.globalAlpha = 0.35;
    for (const { a, b, radius } of parts) {
      canvas.beginPath();
      addLine(pen, [a, b]);
      strokeThick(pen, colours.arm, 2 * radius, 4);
    }
  });
}
