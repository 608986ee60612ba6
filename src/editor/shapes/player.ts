import type { Vec2 } from '../../geometry/vector.ts';
import type { Player } from '../../layout/player.ts';
import { apart, FULL_TURN, fillPath, type Pen, strokePath, strokeThick, traceLine } from './pen.ts';

/**
 * Proportions for the faint figure of the player, mm at a stature of 1750 mm: to show who sits where, never to compute with.
 */
const AT_1750 = {
  stature: 1750,
  shoulders: 408,
  shoulderRadius: 62,
  armRadius: 42,
  elbowOut: 45,
  elbowForward: 90,
  gripIn: 95,
  gripForward: 310,
  headLength: 195,
  headBreadth: 155,
} as const;

/** The player from above with arms at rest: shoulders, arms, head (kit frame). */
export function paintPlayer(pen: Pen, player: Player): void {
  const size = player.stature / AT_1750.stature;
  const half = (player.body.biacromialBreadth ?? AT_1750.shoulders * size) / 2;
  const shoulders: readonly [Vec2, Vec2] = [
    { x: -half, y: 0 },
    { x: half, y: 0 },
  ];
  const arms = ([-1, 1] as const).map((side): readonly Vec2[] => {
    const elbow = { x: side * (half + AT_1750.elbowOut * size), y: AT_1750.elbowForward * size };
    const grip = {
      x: elbow.x - side * AT_1750.gripIn * size,
      y: elbow.y + AT_1750.gripForward * size,
    };
    return [{ x: side * half, y: 0 }, elbow, grip];
  });
  apart(pen, () => {
    pen.canvas.lineCap = 'round';
    pen.canvas.lineJoin = 'round';
    for (const arm of arms) paintLimb(pen, arm, 2 * AT_1750.armRadius * size);
    paintLimb(pen, shoulders, 2 * AT_1750.shoulderRadius * size);
    pen.canvas.beginPath();
    const [breadth, length] = [AT_1750.headBreadth * size, AT_1750.headLength * size];
    pen.canvas.ellipse(0, 10 * size, breadth / 2, length / 2, 0, 0, FULL_TURN);
    fillPath(pen, pen.colours.bodyInside);
    pen.canvas.globalAlpha = 0.7;
    strokePath(pen, pen.colours.body, 1.25);
  });
}

/** A limb with an edge: a thick line, and the same a little thinner in the ground's colour. */
function paintLimb(pen: Pen, way: readonly Vec2[], width: number): void {
  const { canvas, colours, px } = pen;
  canvas.globalAlpha = 0.55;
  traceLine(pen, ...way);
  strokeThick(pen, colours.body, width, 4);
  canvas.globalAlpha = 1;
  strokeThick(pen, colours.bodyInside, width - 2.2 * px, 2);
}
