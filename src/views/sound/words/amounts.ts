import type { Decibels } from '../../../units/quantity.ts';

/** A number to so many decimals, with a true minus and never `-0`. */
export const figure = (value: number, decimals: number): string =>
  (Math.round(value * 10 ** decimals) / 10 ** decimals + 0).toFixed(decimals).replace('-', '−');

/** The same with its sign, `+1.2`, `−0.4`, `0.0`. */
export function signedFigure(value: number, decimals: number): string {
  const text = figure(value, decimals);
  return Number(text.replace('−', '-')) > 0 ? `+${text}` : text;
}

/** A level to whole dB: `104 dB`; a dash for silence. */
export const levelWords = (level: Decibels): string =>
  Number.isFinite(level) ? `${figure(level, 0)} dB` : '–';

/** A difference of levels to a tenth: `6.2 dB`; a dash where one of them is silence. */
export const differenceWords = (difference: Decibels): string =>
  Number.isFinite(difference) ? `${figure(difference, 1)} dB` : '–';

/** What changed, with its sign: `+1.2 dB`. */
export const changeWords = (change: Decibels): string =>
  Number.isFinite(change) ? `${signedFigure(change, 1)} dB` : '–';

/** A frequency as a console shows it: `57 Hz`, `1.25 kHz`. */
export const hertzWords = (frequency: number): string =>
  frequency < 1000 ? `${figure(frequency, 0)} Hz` : `${figure(frequency / 1000, 2)} kHz`;

/** A time to a hundredth of a millisecond: `2.41 ms`. */
export const msWords = (ms: number): string => `${figure(ms, 2)} ms`;

/** Samples, whole: consoles take no fractions. */
export const samplesWords = (samples: number): string => figure(samples, 0);
