import { turnBetween } from '../../units/angle.ts';

/**
 * Light detents: near one of them a dragged value rests on it, and a little more movement leaves it again. Keys, numbers and a
 * closer zoom reach every other value.
 *
 * N1. A coordinate rests on the centre line within `near` of it, unless it began that near beside it: what stands a little off
 *     the centre on purpose is not pulled there by a drag along it.
 * N2. An angle rests where it began and on whole steps of 5 degrees, within 1 degree of each.
 * N3. What goes round a rim keeps the reach it began with, within `near` of it.
 * N4. Going round a rim, it rests on the last clear places at both ends of every clear arc, within `near` of each.
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

/** A value that stays where it began (rule N3). */
export const restOnStart = (start: number, value: number, near: number): number =>
  Math.abs(value - start) <= near ? start : value;

/** An angle in degrees that rests on the nearest of some places (rule N4). */
export function restOnPlaces(angle: number, places: readonly number[], near: number): number {
  const away = (place: number): number => Math.abs(turnBetween(place, angle));
  const nearest = places.reduce<number | undefined>(
    (best, place) => (best !== undefined && away(best) <= away(place) ? best : place),
    undefined,
  );
  return nearest !== undefined && away(nearest) <= near ? nearest : angle;
}
