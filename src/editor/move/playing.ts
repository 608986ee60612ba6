/**
 * How a move or a swing is played. Rules:
 * - P1 Played, it goes on from the moment that is shown, past its end to its beginning, and stops at its nearest moment, exactly there: that is what is to be
 *   seen, and it does not flash past.
 * - P2 Played from the nearest moment it goes the whole way round and stops there again.
 * - P3 Where less motion is wanted nothing runs: a step shows the next tenth of the move, and the nearest moment where that comes first.
 */

/** How long a whole move takes when it is played: slow enough to be followed with the eye, ms. */
export const DURATION = 2400;

export interface Played {
  /** The moment, 0 to 1. */
  readonly at: number;
  readonly isPlaying: boolean;
}

/** What is shown so many ms after it was played from a moment (P1, P2). */
export function playedFrom(from: number, nearestAt: number, elapsed: number): Played {
  const way = (((nearestAt - from) % 1) + 1) % 1 || 1;
  const gone = Math.max(0, elapsed) / DURATION;
  if (gone >= way) return { at: nearestAt, isPlaying: false };
  return { at: (from + gone) % 1, isPlaying: true };
}

const STEPS = 10;

/** The moment that a step leads to (P3). */
export function stepFrom(from: number, nearestAt: number): number {
  // A little more than the moment itself, or the noise of arithmetic would make a step of nothing.
  const next = from >= 1 ? 0 : Math.min(1, (Math.floor(from * STEPS + 1e-6) + 1) / STEPS);
  const isBetween = nearestAt < next && (nearestAt > from || from >= 1);
  return isBetween ? nearestAt : next;
}
