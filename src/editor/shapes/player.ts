import type { Capsule } from '../../geometry/capsule.ts';
import type { Figure } from '../../report/figure.ts';
import { addLine, apart, type Pen, strokeThick, traceLine } from './pen.ts';

/** The player from above with arms at rest: feet, legs, arms, trunk, shoulders, head (kit frame). */
export function paintPlayer(pen: Pen, figure: Figure): void {
  apart(pen, () => {
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    paintFeet(pen, figure);
    for (const { thigh, shin } of figure.legs) paintLimb(pen, [shin, thigh]);
    paintLimb(pen, figure.trunk);
    for (const arm of figure.arms) paintLimb(pen, arm);
    paintLimb(pen, [figure.shoulders]);
    paintLimb(pen, figure.head);
  });
}

/** The turned player with arms at rest: trunk, feet, legs, arms, head. */
export function paintUprightPlayer(pen: Pen, figure: Figure): void {
  apart(pen, () => {
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    paintLimb(pen, [...figure.trunk, figure.neck, figure.shoulders]);
    paintFeet(pen, figure);
    for (const { thigh, shin } of figure.legs) paintLimb(pen, [shin, thigh]);
    for (const arm of figure.arms) paintLimb(pen, arm);
    paintLimb(pen, figure.head);
  });
}

/** Feet on their pedals, with the way of the beater before them. */
function paintFeet(pen: Pen, { feet, beaters }: Figure): void {
  for (const { swept, frame } of beaters) paintLimb(pen, [...frame, ...swept]);
  for (const { solids } of feet) paintLimb(pen, solids);
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
