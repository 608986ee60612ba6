import type { Id } from '../layout/fields.ts';
import type { SoundingKind } from '../report/sound.ts';
import type { Celsius, Decibels, Percent } from '../units/quantity.ts';

/** Parts of the Sound section. */
export type SoundPart =
  | 'close'
  | 'kick'
  | 'overheads'
  | 'timing'
  | 'pairs'
  | 'highPass'
  | 'figures';

/** What no drawing tells of the sound, where the user said otherwise than usual; null: as usual. */
export interface SoundPreferences {
  readonly stageWash: Decibels | null;
  readonly shellLoss: Decibels | null;
  readonly levels: Readonly<Partial<Record<SoundingKind, Decibels>>>;
  /** In Hz, by {@link drumKey}. */
  readonly fundamentals: Readonly<Record<string, number>>;
  /** The air of the venue before, to compare with. */
  readonly lastAir: { readonly temperature: Celsius; readonly humidity: Percent } | null;
  /** The part that is open. */
  readonly part: SoundPart | null;
}

export const usualSoundPreferences: SoundPreferences = {
  stageWash: null,
  shellLoss: null,
  levels: {},
  fundamentals: {},
  lastAir: null,
  part: 'close',
};

/** One drum of one layout. */
export const drumKey = (layout: Id, piece: Id): string => `${layout}/${piece}`;
