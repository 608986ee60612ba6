import type { Id } from '../layout/fields.ts';
import { type Arm, GRIP } from './arm.ts';
import type { Side } from './hands.ts';
import { type Move, type PointBounds, pointBounds, writeStick } from './move.ts';
import type { Strike } from './strike.ts';

/** Rule M1: a stroke on one piece, from contact (t = 0) to its full height (t = 1). */
export class Stroke implements Move {
  readonly from = null;
  readonly speed: PointBounds;
  readonly bend: PointBounds;
  readonly side: Side;
  readonly on: Id;
  private readonly strike: Strike;
  private readonly arm: Arm;

  constructor(side: Side, on: Id, strike: Strike, arm: Arm) {
    this.side = side;
    this.on = on;
    this.strike = strike;
    this.arm = arm;
    // The grip rises evenly in a straight line; the stick turns evenly, so its ends bend only by the turn squared.
    this.speed = pointBounds(strike.rise, strike.turn, arm);
    this.bend = pointBounds(0, strike.turn * strike.turn, arm);
  }

  write(t: number, out: Float64Array, at: number): void {
    const { grip, stick, upward, turn, rise } = this.strike;
    const c = Math.cos(t * turn);
    const s = Math.sin(t * turn);
    out[at + GRIP] = grip.x;
    out[at + GRIP + 1] = grip.y;
    out[at + GRIP + 2] = grip.z + t * rise;
    const lifted = {
      x: c * stick.x + s * upward.x,
      y: c * stick.y + s * upward.y,
      z: c * stick.z + s * upward.z,
    };
    writeStick(out, at, lifted, this.arm);
  }
}
