import type { Id } from '../layout/fields.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Decibels } from '../units/quantity.ts';
import type { Hertz } from './quantities.ts';

/** A piece that sounds by itself. */
export type Sounding = Exclude<Piece, { readonly kind: 'pedal' | 'throne' }>;
export type SoundingKind = Sounding['kind'];

/** Styles of music for which starting points differ. */
export type Style = 'rock' | 'pop' | 'jazz' | 'bigBand' | 'worship' | 'metal';

/** What no drawing tells, for the user to change. */
export interface AcousticChoices {
  /** Level of a piece of a kind at 1 m, struck as hard as the others. */
  readonly levels: Readonly<Record<SoundingKind, Decibels>>;
  /** Levels of single pieces, instead of their kind's. */
  readonly pieceLevels: Readonly<Partial<Record<Id, Decibels>>>;
  /** Fundamentals of single drums, instead of the estimate by size. */
  readonly fundamentals: Readonly<Partial<Record<Id, Hertz>>>;
  /** Level of the diffuse sound of everybody else on the stage, where the kit stands. */
  readonly stageWash: Decibels;
  /** What sound from outside loses on its way into a drum's shell, 0 or more (H41). */
  readonly shellLoss: Decibels;
  readonly style: Style;
}

/**
 * Estimates from memory, no source: sound pressure levels of a loud stroke at 1 m. What counts are the differences, which good
 * players make smaller and hard-hit cymbals larger. The stage wash is that of a loud band. The shell loss is what the mass law
 * leaves of sound around 2 kHz behind thin heads with a hand-sized port and some damping inside: 7 dB an octave lower, 12 dB an
 * octave higher (worked out in `tests/acoustics/shell.test.ts`), little in the bass.
 */
export const DEFAULT_CHOICES: AcousticChoices = {
  levels: {
    kick: 106,
    snare: 108,
    rackTom: 105,
    floorTom: 105,
    hiHat: 98,
    crash: 106,
    ride: 98,
    splash: 102,
    china: 106,
    percussion: 98,
  },
  pieceLevels: {},
  fundamentals: {},
  stageWash: 95,
  shellLoss: 10,
  style: 'rock',
};
