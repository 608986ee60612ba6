import type { Mm } from '../units/quantity.ts';
import { AxisField } from './axisField.ts';
import { BallsBelow } from './ballsBelow.ts';
import { floorBall } from './floorBudget.ts';
import { SPOT, type StickFloor } from './floorField.ts';
import { SweptAxes } from './sweptAxes.ts';
import type { SweptMoves } from './sweptMoves.ts';

/** A rectangle of the plan, kit frame, mm. */
export interface PlanArea {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly right: Mm;
  readonly top: Mm;
}

/**
 * Rule F1: the stick floor. The height told over a spot is never above the true one over any point of its cell, and never more than 15 mm below the
 * lowest true height within 15 mm of the spot. Sticks, hands and forearms are balls about the points of their axes: part by part, the lowest
 * place of its axis over every cell is looked for, and then how far balls about these places come down (rule F3).
 */
export function stickFloor(swept: SweptMoves, area: PlanArea): StickFloor {
  const left = SPOT * (Math.floor(area.left / SPOT) + 0.5);
  const bottom = SPOT * (Math.floor(area.bottom / SPOT) + 0.5);
  const columns = Math.max(1, Math.ceil((area.right - left) / SPOT) + 1);
  const rows = Math.max(1, Math.ceil((area.top - bottom) / SPOT) + 1);
  const heights = new Float32Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  const floor = { left, bottom, columns, rows, heights };
  const { parts } = swept.arm;
  const field = new AxisField(floor, floorBall(Math.max(...parts.map(({ radius }) => radius))));
  const axes = new SweptAxes(swept, field);
  const balls = new BallsBelow(floor, field);
  for (const { name, radius } of parts) {
    const ball = floorBall(radius);
    balls.sayCeilings(ball);
    field.clear(ball);
    axes.show(name);
    balls.lower(ball);
  }
  return floor;
}
