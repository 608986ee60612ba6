import type { Hand } from '../clearance/nearest.ts';
import type { Vec3 } from '../geometry/vector.ts';

/** One position of an arm with its stick in a move; kit frame, mm. */
export interface ArmPosition {
  readonly at: number;
  readonly elbow: Vec3;
  readonly grip: Vec3;
  readonly butt: Vec3;
  readonly tip: Vec3;
}

/** The way an arm goes in one move, evenly spaced in time, for drawing. */
export interface Sweep {
  readonly hand: Hand;
  readonly positions: readonly ArmPosition[];
}
