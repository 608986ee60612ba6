import { cosDeg, toDegrees } from '../units/angle.ts';
import type { Decibels, Degrees } from '../units/quantity.ts';
import { toDecibels, toEnergy } from './decibels.ts';

/** H4 A first-order pattern: its sensitivity at an angle off the axis is a + b cos(angle), a + b = 1 (1 on the axis). */
export interface Pattern {
  readonly a: number;
  readonly b: number;
}

/** The pattern with a given omnidirectional part, 0 to 1. */
export const patternOf = (a: number): Pattern => ({ a, b: 1 - a });

/**
 * The named conventions. Subcardioid has two and supercardioid three: a published table that says 'supercardioid' means one
 * of them. `supercardioidExact` has the greatest front-to-back ratio.
 */
export const PATTERNS = {
  omni: patternOf(1),
  subcardioid75: patternOf(0.75),
  subcardioid70: patternOf(0.7),
  cardioid: patternOf(0.5),
  supercardioid375: patternOf(0.375),
  supercardioid37: patternOf(0.37),
  supercardioidExact: patternOf((Math.sqrt(3) - 1) / 2),
  hypercardioid: patternOf(0.25),
  figure8: patternOf(0),
} as const satisfies Record<string, Pattern>;
export type PatternName = keyof typeof PATTERNS;

/** The convention a pattern follows, to a thousandth; undefined between them. */
export function patternName({ a }: Pattern): PatternName | undefined {
  const names = Object.keys(PATTERNS) as PatternName[];
  return names.find((name) => Math.abs(PATTERNS[name].a - a) < 5e-4);
}

/**
 * H5 What is claimed of a null: no real mic rejects more than 20 dB here, the careful end of the 20 to 25 dB of common
 *    practice (from memory). Levels, isolation and turns keep to it; the ideal figures below don't.
 */
export const NULL_DEPTH: Decibels = 20;
/** H5 as an energy relative to the axis. */
export const LEAST_ENERGY = toEnergy(-NULL_DEPTH);

/** H4, signed: the rear lobe of a pattern is negative. */
export const sensitivity = ({ a, b }: Pattern, cos: number): number => a + b * cos;

/** Ideal level at an angle, relative to the axis; -Infinity in a null. */
export function idealLevel(pattern: Pattern, angle: Degrees): Decibels {
  const s = sensitivity(pattern, cosDeg(angle));
  return toDecibels(s * s);
}

/** The level at an angle that is claimed of a real mic (H5). */
export const claimedLevel = (pattern: Pattern, angle: Degrees): Decibels =>
  Math.max(-NULL_DEPTH, idealLevel(pattern, angle));

/** H6 Random energy efficiency: the energy from all directions alike, relative to an omni's. a^2 + b^2 / 3. */
export const randomEnergyEfficiency = ({ a, b }: Pattern): number => a * a + (b * b) / 3;

/** The angle off the axis at which a pattern hears nothing; undefined where it hears something everywhere. */
export function nullAngle({ a, b }: Pattern): Degrees | undefined {
  return b > 0 && a <= b ? toDegrees(Math.acos(-a / b)) : undefined;
}
