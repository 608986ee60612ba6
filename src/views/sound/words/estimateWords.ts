import type { LeftOut, MusicStyle } from '../../../report/sound.ts';
import { listed } from '../../words/nameOf.ts';

const leftOut: Readonly<Record<LeftOut, string>> = {
  reflections: 'the room’s reflections',
  shadows: 'shadows (but for the shell around a mic inside)',
  radiation: 'that pieces don’t radiate alike to all sides',
  frequency: 'that patterns and drums change with pitch',
  air: 'losses in air',
};

/** Said once on the screen: what the figures are and what they leave out. */
export const estimateWords = (parts: readonly LeftOut[]): string =>
  `A direct-sound estimate. It leaves out ${listed(parts.map((part) => leftOut[part]))}. Trust differences more than levels, and your ears more than both.`;

const styles: Readonly<Record<MusicStyle, string>> = {
  rock: 'Rock',
  pop: 'Pop',
  jazz: 'Jazz',
  bigBand: 'Big band',
  worship: 'Worship',
  metal: 'Metal',
};

/** A style of music as it is offered. */
export const styleWords = (style: MusicStyle): string => styles[style];

/** Styles in the order in which they are offered. */
export const STYLES = Object.keys(styles) as MusicStyle[];
