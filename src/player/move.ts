import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import { type Arm, BUTT, GRIP, TIP } from './arm.ts';
import type { Side } from './hands.ts';

/**
 * What one hand does, as a path of positions over t in [0, 1] (hand space), with the bounds that let a search skip intervals
 * without missing a touch. Speeds are mm per unit of t, bends (second derivatives) mm per unit of t squared.
 */
export interface Move {
  readonly side: Side;
  readonly on: Id;
  /** The piece the hand comes from; null for a stroke. */
  readonly from: Id | null;
  /** Most any point moves: the grip, the butt and the tip. */
  readonly speed: PointBounds;
  readonly bend: PointBounds;
  /** Writes the position at time t to out[at] and the numbers after it. */
  write(t: number, out: Float64Array, at: number): void;
}

export interface PointBounds {
  readonly grip: number;
  readonly butt: number;
  readonly tip: number;
}

/** A point at `reach` along a stick moves at most as the grip does and as the stick turns, together. */
export const pointBounds = (grip: number, stick: number, arm: Arm): PointBounds => ({
  grip,
  butt: grip + arm.behind * stick,
  tip: grip + arm.ahead * stick,
});

/** Writes grip, butt and tip for a stick along the unit vector `stick` from the grip already at out[at + GRIP], then the elbow. */
export function writeStick(out: Float64Array, at: number, stick: Vec3, arm: Arm): void {
  const grip = at + GRIP;
  const x = out[grip] as number;
  const y = out[grip + 1] as number;
  const z = out[grip + 2] as number;
  out[grip + 3] = x;
  out[grip + 4] = y;
  out[grip + 5] = z;
  out[at + BUTT] = x - arm.behind * stick.x;
  out[at + BUTT + 1] = y - arm.behind * stick.y;
  out[at + BUTT + 2] = z - arm.behind * stick.z;
  out[at + TIP] = x + arm.ahead * stick.x;
  out[at + TIP + 1] = y + arm.ahead * stick.y;
  out[at + TIP + 2] = z + arm.ahead * stick.z;
  arm.writeElbow(out, at);
}
