import { toInches } from '../units/inch.ts';
import type { AcousticChoices, Sounding } from './choices.ts';
import type { Hertz } from './quantities.ts';

/**
 * Estimates from memory, no source: of two drums tuned alike, pitch goes with one over the diameter. Hz times inches of common tunings,
 * as a 22 in kick at 57 Hz, a 14 in snare at 190, a 12 in rack tom at 130 and a 16 in floor tom at 81. Tunings differ by
 * half an octave and more.
 */
const HERTZ_INCHES = { kick: 1250, snare: 2660, rackTom: 1560, floorTom: 1300 } as const;

/** H17 A drum's fundamental: the user's figure, else the estimate by its size. Cymbals and small percussion have none. */
export function fundamentalOf(
  piece: Sounding,
  { fundamentals }: Pick<AcousticChoices, 'fundamentals'>,
): Hertz | undefined {
  const own = fundamentals[piece.id];
  if (own !== undefined) return own;
  switch (piece.kind) {
    case 'kick':
    case 'snare':
    case 'rackTom':
    case 'floorTom':
      return HERTZ_INCHES[piece.kind] / toInches(piece.diameter);
    default:
      return undefined;
  }
}
