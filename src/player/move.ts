import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
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
  /** Writes the position at t. */
  write(t: number, out: Float64Array): void;
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

/** Writes grip, butt and tip for a stick lying along the unit vector (ux, uy, uz) from the grip already in `out`, then the elbow. */
export function writeStick(
  out: Float64Array,
  stick: { readonly x: number; readonly y: number; readonly z: number },
  arm: Arm,
): void {
  const x = out[GRIP] as Mm;
  const y = out[GRIP + 1] as Mm;
  const z = out[GRIP + 2] as Mm;
  out[GRIP + 3] = x;
  out[GRIP + 4] = y;
  out[GRIP + 5] = z;
  out[BUTT] = x - arm.behind * stick.x;
  out[BUTT + 1] = y - arm.behind * stick.y;
  out[BUTT + 2] = z - arm.behind * stick.z;
  out[TIP] = x + arm.ahead * stick.x;
  out[TIP + 1] = y + arm.ahead * stick.y;
  out[TIP + 2] = z + arm.ahead * stick.z;
  arm.writeElbow(out);
}
