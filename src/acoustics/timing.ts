import { distance } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Decibels, Degrees, Mm } from '../units/quantity.ts';
import {
  combNulls,
  type Delay,
  delayOf,
  phaseAfter,
  type Ripple,
  ripple,
  type Start,
} from './comb.ts';
import { facingOf, startOf } from './facing.ts';
import { hearingOf, type Listener } from './listener.ts';
import { type PolarityAdvice, polarityFor } from './polarity.ts';
import type { Hertz, MetresPerSecond } from './quantities.ts';
import type { Source } from './source.ts';

/** One source on its way to two mics that are mixed. */
export interface TimingRow {
  /** H28: a close mic and an overhead, the close mic's source; two overheads, the snare; two close mics of the same source. */
  readonly kind: 'closeAndOverhead' | 'overheads' | 'sameSource';
  readonly source: Id;
  readonly first: Id;
  readonly second: Id;
  /** To the second mic less to the first, from the middle of the struck head. */
  readonly pathDifference: Mm;
  /** Below 0 where the second mic hears first. */
  readonly delay: Delay;
  /** Level at the first less at the second, at equal gain. */
  readonly levelDifference: Decibels;
  readonly ripple: Ripple;
  /** Whether the stroke starts alike in both, and whether that is certain (H22). */
  readonly start: Start;
  readonly sure: boolean;
  /** The lowest notches as plugged, and with one of the two inverted. */
  readonly nulls: readonly Hertz[];
  readonly nullsInverted: readonly Hertz[];
  /** H42 Whether as plugged a notch falls where it is heard. */
  readonly harms: boolean;
  readonly fundamental: Hertz | null;
  /** Of the second against the first at the fundamental, the start counted; null without a fundamental. */
  readonly phase: Degrees | null;
  readonly polarity: PolarityAdvice;
}

/** The highest pitch that young ears hear (common knowledge). */
const HEARD_TO: Hertz = 20_000;

/** The delay that lines a close mic up with the overhead that hears its source loudest. */
export interface Alignment {
  readonly mic: Id;
  readonly source: Id;
  readonly overhead: Id;
  /** For the close mic. Below 0: the overhead hears first, and would have to be delayed. */
  readonly delay: Delay;
  /** How far the other overheads then are from lining up, the most. */
  readonly rest: Mm;
}

export interface Timing {
  /** The most harmful first (H42). */
  readonly rows: readonly TimingRow[];
  readonly alignments: readonly Alignment[];
}

/**
 * H28 Pairs that are timed: every close mic with every overhead, by the close mic's own source; the overheads with each
 *     other, by the snare (else what the first hears first); close mics with each other that share their source.
 * H42 The smaller the level difference, the deeper the notches and the more harm when both are mixed at equal gain. A path
 *     difference whose first notch is above 20 kHz does none, unless the start is opposite: that takes the bass.
 * H29 Time counts from the middle of the struck head, straight to the mic's front.
 */
export function timingOf(
  listeners: readonly Listener[],
  snare: Source | undefined,
  speed: MetresPerSecond,
): Timing {
  const close = listeners.filter(({ role }) => role === 'close');
  const overheads = listeners.filter(({ role }) => role === 'overhead');
  const row = (kind: TimingRow['kind'], source: Source | undefined, pair: Pair) =>
    source ? [timingRow(kind, source, pair, speed)] : [];
  const rows = [
    ...close.flatMap((first) =>
      overheads.flatMap((second) => row('closeAndOverhead', first.own, [first, second])),
    ),
    ...pairs(overheads).flatMap((pair) => row('overheads', snare ?? pair[0].own, pair)),
    ...pairs(close)
      .filter(([first, second]) => first.own === second.own)
      .flatMap((pair) => row('sameSource', pair[0].own, pair)),
  ];
  return {
    rows: rows.toSorted(
      (p, q) =>
        Number(q.harms) - Number(p.harms) ||
        Math.abs(p.levelDifference) - Math.abs(q.levelDifference),
    ),
    alignments: close.flatMap((mic) => alignment(mic, overheads, speed) ?? []),
  };
}

export type Pair = readonly [first: Listener, second: Listener];

/** Every two of a list, in its order. */
export const pairs = (listeners: readonly Listener[]): readonly Pair[] =>
  listeners.flatMap((first, i) => listeners.slice(i + 1).map((second): Pair => [first, second]));

/** H29 The way from the middle of the struck head to a mic's front. */
export const pathTo = ({ ear }: Listener, { struck }: Source): Mm =>
  distance(ear.tip, struck.centre);

function timingRow(
  kind: TimingRow['kind'],
  source: Source,
  [first, second]: Pair,
  speed: MetresPerSecond,
): TimingRow {
  const pathDifference = pathTo(second, source) - pathTo(first, source);
  const delay = delayOf(pathDifference, speed);
  const levelDifference =
    (hearingOf(first, source)?.level ?? 0) - (hearingOf(second, source)?.level ?? 0);
  const sides = [facingOf(first.ear, source), facingOf(second.ear, source)] as const;
  const start = startOf(...sides);
  const other: Start = start === 'equal' ? 'opposite' : 'equal';
  const fundamental = source.fundamental ?? null;
  const sure = sides.every((side) => side.sure);
  const nulls = combNulls(pathDifference, speed, start);
  const phase = fundamental === null ? null : phaseAfter(delay.ms, fundamental, start);
  return {
    kind,
    source: source.piece.id,
    first: first.id,
    second: second.id,
    pathDifference,
    delay,
    levelDifference,
    ripple: ripple(levelDifference),
    start,
    sure,
    nulls,
    nullsInverted: combNulls(pathDifference, speed, other),
    harms: start === 'opposite' || nulls.some((frequency) => frequency <= HEARD_TO),
    fundamental,
    phase,
    polarity: polarityFor({ phase, start, sure }),
  };
}

function alignment(
  mic: Listener,
  overheads: readonly Listener[],
  speed: MetresPerSecond,
): Alignment | undefined {
  const { own } = mic;
  if (!own) return undefined;
  const [loudest] = overheads.toSorted(
    (p, q) => (hearingOf(q, own)?.level ?? 0) - (hearingOf(p, own)?.level ?? 0),
  );
  if (!loudest) return undefined;
  const path = pathTo(loudest, own);
  return {
    mic: mic.id,
    source: own.piece.id,
    overhead: loudest.id,
    delay: delayOf(path - pathTo(mic, own), speed),
    rest: Math.max(...overheads.map((other) => Math.abs(pathTo(other, own) - path))),
  };
}
