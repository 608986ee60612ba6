import type { Decibels } from '../units/quantity.ts';

/** The level of an energy relative to 1; -Infinity for none. */
export const toDecibels = (energy: number): Decibels => 10 * Math.log10(energy);

/** The energy of a level, relative to that of 0 dB. */
export const toEnergy = (level: Decibels): number => 10 ** (level / 10);

/** The level of sounds heard at once, added as energy; -Infinity for none. */
export const energySum = (levels: readonly Decibels[]): Decibels =>
  toDecibels(levels.reduce((sum, level) => sum + toEnergy(level), 0));
