import type { MicClass } from '../layout/mics/micClass.ts';
import type { Insert, MusicStyle } from '../layout/patch.ts';
import type { Decibels } from '../units/quantity.ts';
import type { Pickup } from './pickup.ts';
import type { Hertz } from './quantities.ts';
import { isSoft } from './style.ts';

/** Where to start with a mic's high-pass in the style chosen: a range of common practice, from the acoustics. */
export interface HighPassRange {
  readonly mic: string;
  readonly low: Hertz;
  readonly high: Hertz;
}

/** Below this a filter is set in steps of 5 Hz, from it on in steps of 10 (common practice, no source). */
const FINE_BELOW: Hertz = 100;

/**
 * B1 One value to start from: the geometric middle of the range, on the steps of a desk, and never outside the range.
 */
export function highPassStart({ low, high }: Pick<HighPassRange, 'low' | 'high'>): Hertz {
  const middle = Math.sqrt(low * high);
  const step = middle < FINE_BELOW ? 5 : 10;
  return Math.min(high, Math.max(low, Math.round(middle / step) * step));
}

/**
 * B2 Inserts to start from (common practice, no source): in loud styles kick and the snare's stick side get gate and
 *    compressor, the snare's far side and toms a gate; in soft ones, and on cymbals, nothing.
 */
export function insertStart({ source, place }: Pickup, style: MusicStyle): Insert {
  if (isSoft(style)) return 'none';
  switch (source) {
    case 'kick':
      return 'gateAndCompressor';
    case 'snare':
      return place === 'top' ? 'gateAndCompressor' : 'gate';
    case 'rackTom':
    case 'floorTom':
      return 'gate';
    default:
      return 'none';
  }
}

const CLOSE_PAD: Decibels = 10;

/** B3 A condenser or plate close to a drum that is hit hard starts with a pad of 10 dB (common practice, no source). */
export function padStart(
  { source }: Pickup,
  { type }: Pick<MicClass, 'type'>,
  style: MusicStyle,
): Decibels {
  const isHot = type === 'condenser' || type === 'boundary';
  const isClose =
    source === 'kick' || source === 'snare' || source === 'rackTom' || source === 'floorTom';
  return isHot && isClose && !isSoft(style) ? CLOSE_PAD : 0;
}
