import type { Degrees } from '../units/quantity.ts';
import type { Start } from './comb.ts';

/** Which polarity of one of two mics to try first. `inverted`: the other than as plugged. */
export interface PolarityAdvice {
  readonly tryFirst: 'normal' | 'inverted';
  readonly reason: PolarityReason;
}

/**
 * Why: the fundamental arrives nearly in phase or nearly out of it, or in between, where neither polarity helps much and a
 * delay does; without a fundamental, whether both mics are on the same side of what is struck. From beside a source no side
 * is certain: only listening tells.
 */
export type PolarityReason =
  | 'inPhase'
  | 'outOfPhase'
  | 'between'
  | 'sameSide'
  | 'oppositeSides'
  | 'unsureSide';

/** H30 Within 60 degrees of 0 or 180 the phase of the fundamental decides clearly. */
const CLEAR: Degrees = 60;

/** What is known of a source in two mics. */
export interface Arrival {
  /** At the fundamental, the start counted (H12); null without a fundamental. */
  readonly phase: Degrees | null;
  readonly start: Start;
  /** Whether the start is certain (H22). */
  readonly sure: boolean;
}

/** H30 The polarity in which fundamentals add; as plugged where nothing decides. */
export function polarityFor({ phase, start, sure }: Arrival): PolarityAdvice {
  if (!sure) return { tryFirst: 'normal', reason: 'unsureSide' };
  if (phase === null) {
    return start === 'equal'
      ? { tryFirst: 'normal', reason: 'sameSide' }
      : { tryFirst: 'inverted', reason: 'oppositeSides' };
  }
  const off = Math.abs(phase);
  if (off <= CLEAR) return { tryFirst: 'normal', reason: 'inPhase' };
  if (off >= 180 - CLEAR) return { tryFirst: 'inverted', reason: 'outOfPhase' };
  return { tryFirst: off <= 90 ? 'normal' : 'inverted', reason: 'between' };
}
