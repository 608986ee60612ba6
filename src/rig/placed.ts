import type { Capsule } from '../geometry/capsule.ts';
import type { Cylinder, Tube } from '../geometry/cylinder.ts';
import type { Vec2, Vec3 } from '../geometry/vector.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import type { StandClass } from '../layout/mics/mount.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Mm } from '../units/quantity.ts';

/** Parts a microphone and what holds it are made of, each a capsule. */
export type MicPart =
  | 'body'
  | 'connector'
  | 'bend'
  | 'clipArm'
  | 'boom'
  | 'mast'
  | 'base'
  | 'plate';

export interface MicSolid {
  readonly part: MicPart;
  readonly capsule: Capsule;
}

/** Feet on the deck: legs from the hub to each foot, or a disc about it. Kit frame, mm. */
export interface Footprint {
  readonly hub: Vec2;
  readonly hubRadius: Mm;
  /** Tips of the legs; empty for a disc. */
  readonly feet: readonly Vec2[];
  /** Height at which the legs meet the mast: cables pass under legs that stand off the deck. */
  readonly legHeight: Mm;
}

/** A stand with its parts in space and what it cannot do. */
export interface PlacedStand {
  readonly standClass: StandClass;
  /** Top of the mast: the boom's clutch. */
  readonly clutch: Vec3;
  /** Where the mic is held. */
  readonly hold: Vec3;
  readonly boomLength: Mm;
  /** How far the mic is beyond what mast and boom can reach, mm; 0 when it reaches. */
  readonly beyondReach: Mm;
  readonly footprint: Footprint;
}

/** A microphone in space (kit frame, mm). */
export interface PlacedMic {
  readonly mic: Mic;
  readonly micClass: MicClass;
  /** The front of the mic and the unit direction it listens to. */
  readonly tip: Vec3;
  readonly axis: Vec3;
  readonly solids: readonly MicSolid[];
  readonly stand: PlacedStand | null;
  /** The cable's way from the connector down to the deck, in order: along arm or boom, down the mast or the drum's support. */
  readonly descent: readonly DescentPart[];
  /** Where the cable reaches the deck. */
  readonly deckPoint: Vec2;
}

/** One stretch of the cable above the deck, with the length it adds. */
export interface DescentPart {
  readonly along: 'boom' | 'mast' | 'arm' | 'drum' | 'kick' | 'shell' | 'air';
  readonly length: Mm;
}

/** A piece in space (kit frame, mm): its solid parts and its feet. Open ends of shells are not modelled. */
export interface PlacedPiece {
  readonly piece: Piece;
  /** Shells, cymbals and seats. */
  readonly shells: readonly Cylinder[];
  /** Hoops of drums: rings beyond the heads, outside the shell. */
  readonly hoops: readonly Tube[];
  /** Masts, arms, legs and pedal plates. */
  readonly hardware: readonly Capsule[];
  /** Where its stand or its own legs meet the deck. Legs on a shell are one small disc each. */
  readonly footprints: readonly Footprint[];
  /** Convex plan outlines (anticlockwise) of what lies low over the deck without legs: a kick's shell, a pedal. */
  readonly outlines: readonly (readonly Vec2[])[];
}

/** Everything in space. */
export interface Rig {
  readonly pieces: readonly PlacedPiece[];
  readonly mics: readonly PlacedMic[];
}
