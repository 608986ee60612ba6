import { turnBetween, wrapDegrees } from './angle.ts';
import type { Degrees } from './quantity.ts';

/** Minutes of a clock face in a full turn, and the steps in which directions are told exactly and roughly. */
const FACE = 720;
const STEP = 10;
const HALF_HOUR = 30;

/**
 * Where the hour hand of a clock that lies with 12 toward the audience and 3 to the player's right points (azimuth 90 and 0), in minutes
 * past twelve, [0, 720), to the nearest step. Halves are rounded away from twelve on both sides: mirrored directions are told mirrored.
 */
function minutesPast12(azimuth: Degrees, step: number): number {
  const minutes = turnBetween(azimuth, 90) * 2;
  const told = Math.sign(minutes) * Math.round(Math.abs(minutes) / step) * step;
  return (told + FACE) % FACE;
}

const hourOf = (minutes: number): number => Math.floor(minutes / 60) || 12;

/** A direction on a clock face to ten minutes, which are five degrees: `1:40`; so the hand is never more than 2.5 degrees off. */
export function clockText(azimuth: Degrees): string {
  const minutes = minutesPast12(azimuth, STEP);
  return `${hourOf(minutes)}:${String(minutes % 60).padStart(2, '0')}`;
}

/**
 * The same as a technician says it, to the nearest half hour: `1 o'clock`, `half past 1`; so the hand is never more than 7.5 degrees off.
 * Of an azimuth of the kit frame it is the clock as the player sees it.
 */
export function oClockText(azimuth: Degrees): string {
  const minutes = minutesPast12(azimuth, HALF_HOUR);
  return minutes % 60 === 0 ? `${hourOf(minutes)} o'clock` : `half past ${hourOf(minutes)}`;
}

/** A direction in whole degrees and as a technician says it: `40°, about half past 1`. */
export const directionText = (azimuth: Degrees): string =>
  `${Math.round(wrapDegrees(azimuth)) % 360}°, about ${oClockText(azimuth)}`;
