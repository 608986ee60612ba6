/**
 * Light detents: near one of them a dragged value rests on it, and a little more movement leaves it again. Keys, numbers and a
 * closer zoom reach every other value.
 *
 * N1. A coordinate rests on the centre line within `near` of it, unless it began that near beside it: what stands a little off
 *     the centre on purpose is not pulled there by a drag along it.
 * N2. An angle rests where it began and on whole steps of 5 degrees, within 1 degree of each.
 */
export function restOnCentre(start: number, by: number, near: number): number {
  const value = start + by;
  const beganBeside = start !== 0 && Math.abs(start) <= near;
  return Math.abs(value) <= near && !beganBeside ? 0 : value;
}

const STEP = 5;
const NEAR_STEP = 1;

/** An angle in degrees turned from `start` by `by` (rule N2). */
export function restOnStep(start: number, by: number): number {
  if (Math.abs(by) <= NEAR_STEP) return start;
  const step = Math.round((start + by) / STEP) * STEP;
  return Math.abs(start + by - step) <= NEAR_STEP ? step : start + by;
}
