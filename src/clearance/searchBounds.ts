import type { Mm } from '../units/quantity.ts';

/**
 * Rule C2: the search stops where nothing left can be nearer by more than this, and what it reports is lowered by it: the clearance shown
 * is at or below the exact minimum of the model, by at most this many mm.
 */
export const TOLERANCE: Mm = 0.05;

/** What a search need not know (mm): clearances at or above `limit`, how far one is below `enough`, and differences up to `tolerance`. */
export interface Bounds {
  readonly limit: Mm;
  readonly enough: Mm;
  readonly tolerance: Mm;
  /** Indices of the only moves to look at; all when not given. */
  readonly moves?: Int32Array;
}

/** Everything is to be known, to within TOLERANCE. */
export const UNBOUNDED: Bounds = {
  limit: Number.POSITIVE_INFINITY,
  enough: Number.NEGATIVE_INFINITY,
  tolerance: TOLERANCE,
};
