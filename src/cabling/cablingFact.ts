import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';

/** What can be wrong with the cables or the box. */
export type CablingCode =
  | 'run-no-way'
  | 'run-joined'
  | 'run-signal'
  | 'stock-missing'
  | 'run-unplugged'
  | 'input-twice'
  | 'input-beyond-box'
  | 'more-mics-than-inputs'
  | 'lane-crossed'
  | 'lane-blocked'
  | 'stairs-crossed'
  | 'stairs-off-edge'
  | 'box-in-obstacle'
  | 'box-off-deck';

/** A fact for the report to judge and the views to put into words. */
export interface CablingFact {
  readonly code: CablingCode;
  /** Mics and pieces it is about, the main one first. */
  readonly ids: readonly Id[];
  /** What tells it from others of the same code, where the ids don't. */
  readonly which?: string;
  /** On the deck, kit frame; undefined where it has no place. */
  readonly place: Vec3 | undefined;
  /** Lengths in mm, counts and input numbers. */
  readonly numbers: Readonly<Record<string, number>>;
}
