import type { Decibels, Degrees, Mm } from '../units/quantity.ts';
import { energySum } from './decibels.ts';
import { aimAt, facingOf } from './facing.ts';
import { angleOff, levelAt } from './hearing.ts';
import { proximityBoost } from './proximity.ts';
import type { Hertz, MetresPerSecond } from './quantities.ts';
import { distanceToDisc, type Ear, NEAREST } from './radiation.ts';
import { shellAround } from './shell.ts';
import type { Source } from './source.ts';

/** How well a mic hears its own source. */
export interface CloseFigures {
  /** Level of its own source. */
  readonly level: Decibels;
  /** All pieces that it is not there to hear, added as energy; -Infinity where there is none. */
  readonly others: Decibels;
  /** H24 Level over others; Infinity where there is none. */
  readonly isolation: Decibels;
  /** H8 at 100 Hz, for where it aims (H25). */
  readonly proximity: Decibels;
}

/** An ear among what it should and shouldn't hear. It need not be where its mic is. */
export interface CloseEar {
  readonly ear: Ear;
  readonly own: Source;
  readonly unwanted: readonly Source[];
  /** Every drum that the ear may be inside of. */
  readonly drums: readonly Source[];
  readonly speed: MetresPerSecond;
}

/** The frequency whose boost is told. */
const BOOST_AT: Hertz = 100;

/** H24 What an ear hears of its own source against all that it shouldn't hear. */
export function closeFigures(close: CloseEar): CloseFigures {
  const { ear, own, unwanted, drums } = close;
  const shell = shellAround(ear.tip, drums);
  return figuresFrom(
    close,
    levelAt(ear, own, shell),
    unwanted.map((source) => levelAt(ear, source, shell)),
  );
}

/** H24 from levels that are known. */
export function figuresFrom(
  { ear, own, speed }: CloseEar,
  level: Decibels,
  spill: readonly Decibels[],
): CloseFigures {
  const others = energySum(spill);
  const proximity = proximityBoost(ear.pattern, {
    frequency: BOOST_AT,
    speed,
    ...workingDistance(ear, own),
  });
  return { level, others, isolation: level - others, proximity };
}

/**
 * H25 A mic works from where its axis meets the head it faces; where it meets none, from the head's nearest point, at the angle of the
 *     head's middle.
 */
export function workingDistance(
  ear: Ear,
  own: Source,
): { readonly distance: Mm; readonly angle: Degrees } {
  const { surface } = facingOf(ear, own);
  const aim = aimAt(ear, surface);
  if (aim && aim.zone !== 'beside') return { distance: Math.max(NEAREST, aim.distance), angle: 0 };
  return {
    distance: Math.max(NEAREST, distanceToDisc(ear.tip, surface)),
    angle: angleOff(ear, surface.centre),
  };
}
