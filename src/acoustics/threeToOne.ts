import { distance } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Decibels, Mm } from '../units/quantity.ts';
import { type Ripple, ripple } from './comb.ts';
import { hearingOf, type Listener } from './listener.ts';
import { pairs } from './timing.ts';

/** One source in two open mics: its own and another. */
export interface PairRipple {
  /** The mic whose own source it is, and the other one. */
  readonly mic: Id;
  readonly other: Id;
  readonly source: Id;
  /** Whether the other mic is there to hear the source too. */
  readonly shared: boolean;
  /** From one mic to the other. */
  readonly spacing: Mm;
  /** To the nearest point of the source. */
  readonly near: Mm;
  readonly far: Mm;
  /** Spacing over near: the rule asks for 3 (L. Burroughs, Microphones: Design and Application, 1974). */
  readonly ratio: number;
  /** Level at its own mic less at the other, at equal gain. */
  readonly levelDifference: Decibels;
  readonly ripple: Ripple;
}

/**
 * H31 Of every pair of open mics, the one of their own sources whose levels in both mics differ less: it ripples more when
 *     the two are mixed at equal gain. Sorted by ripple, the most harmful first. The 3:1 rule's ripple is 6 dB peak to dip
 *     at its 9.5 dB of difference, not 1 dB; 1 dB needs 24.8 dB.
 */
export function pairRipples(listeners: readonly Listener[]): readonly PairRipple[] {
  return pairs(listeners)
    .flatMap(([first, second]) => {
      const [worse, other] = [between(first, second), between(second, first)];
      if (!worse || !other) return worse ?? other ?? [];
      return apart(other) < apart(worse) ? other : worse;
    })
    .toSorted((p, q) => apart(p) - apart(q));
}

/** How far the levels differ, either way. */
const apart = ({ levelDifference }: PairRipple): Decibels => Math.abs(levelDifference);

function between(mic: Listener, other: Listener): PairRipple | undefined {
  const { own } = mic;
  const near = own && hearingOf(mic, own);
  const far = own && hearingOf(other, own);
  if (!near || !far) return undefined;
  const spacing = distance(mic.ear.tip, other.ear.tip);
  const levelDifference = near.level - far.level;
  return {
    mic: mic.id,
    other: other.id,
    source: near.piece,
    shared: other.wanted.includes(own),
    spacing,
    near: near.distance,
    far: far.distance,
    ratio: spacing / near.distance,
    levelDifference,
    ripple: ripple(levelDifference),
  };
}
