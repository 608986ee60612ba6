import type { Movement } from '../clearance/nearest.ts';
import { type Vec3, vec } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import { BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import { mirrored, type Side, signOf } from '../player/hands.ts';
import { playingOf } from '../player/moves.ts';

/** One position of an arm with its stick in a move; kit frame, mm. `at` runs from 0 to 1 over the move. */
export interface ArmPosition {
  readonly at: number;
  readonly elbow: Vec3;
  readonly grip: Vec3;
  readonly butt: Vec3;
  readonly tip: Vec3;
}

/** The way an arm goes in one move, evenly spaced in time, for drawing. */
export interface Sweep {
  readonly hand: Side;
  readonly positions: readonly ArmPosition[];
}

/** The arm's way in a stroke or a travel, in `steps` + 1 positions; null for legs and cymbals, which have no way. */
export function sweepOf(layout: Layout, movement: Movement, steps: number): Sweep | null {
  if (movement.kind === 'leg' || movement.kind === 'swing') return null;
  const ends = movement.kind === 'stroke' ? [movement.on] : [movement.from, movement.to];
  const pieces = layout.pieces.filter(({ id }) => ends.includes(id));
  const on = movement.kind === 'stroke' ? movement.on : movement.to;
  const from = movement.kind === 'stroke' ? null : movement.from;
  const move = playingOf(layout.player, pieces).moves.find(
    (one) => one.side === movement.hand && one.on === on && one.from === from,
  );
  if (!move) return null;
  const row = new Float64Array(POSITION);
  const sign = signOf(movement.hand);
  const point = (i: number): Vec3 =>
    mirrored(vec(row[i] ?? 0, row[i + 1] ?? 0, row[i + 2] ?? 0), sign);
  const positions = Array.from({ length: steps + 1 }, (_, step): ArmPosition => {
    const at = step / steps;
    move.write(at, row, 0);
    return { at, elbow: point(ELBOW), grip: point(GRIP), butt: point(BUTT), tip: point(TIP) };
  });
  return { hand: movement.hand, positions };
}
