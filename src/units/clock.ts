import { wrapDegrees } from './angle.ts';
import type { Degrees } from './quantity.ts';

/** Minutes of a clock face in a full turn, and the steps in which directions are told. */
const FACE = 720;
const STEP = 10;

/**
 * A direction on the plan as the hour hand of a clock that lies on the deck with 12 toward the audience and 3 to the player's right:
 * `1:40`. Told in steps of ten minutes, which are five degrees; so the hand is never more than 2.5 degrees off.
 */
export function clockText(azimuth: Degrees): string {
  const minutes = (Math.round((wrapDegrees(90 - azimuth) * 2) / STEP) * STEP) % FACE;
  const hour = Math.floor(minutes / 60);
  return `${hour === 0 ? 12 : hour}:${String(minutes % 60).padStart(2, '0')}`;
}
