import type { Vec3 } from '../geometry/vector.ts';
import type { Mount } from '../layout/mics/mount.ts';
import type { MicSolid, PlacedStand } from '../rig/placed.ts';
import type { Degrees, Mm } from '../units/quantity.ts';

/** One number of a mount that may change, counted from its present value, in steps of `step` mm or degrees, from `least` to `most`. */
export interface Freedom {
  readonly name: 'angle' | 'reach' | 'height' | 'pitch' | 'x' | 'y' | 'z' | 'baseTurn';
  readonly step: number;
  readonly least: number;
  readonly most: number;
}

/** A mic moved: one value for each of its freedoms. */
export interface Spot {
  readonly mount: Mount;
  readonly tip: Vec3;
  /** Unit vector to where the mic listens. */
  readonly axis: Vec3;
  readonly stand: PlacedStand | null;
  /** The mic's solids in groups that keep together, each looked at for itself. */
  readonly groups: readonly (readonly MicSolid[])[];
}

/** How far things get from where they are in a spot when its values change by at most some halves each way. */
export interface Leeway {
  /** Any point of each solid, mm, group by group. */
  readonly rooms: readonly (readonly Mm[])[];
  /** How much more that may be, in any direction, than what changing one value after the other as far as the halves adds up to, mm. */
  readonly bends: readonly (readonly Mm[])[];
  readonly tip: Mm;
  readonly axis: Degrees;
  readonly base: Mm;
  /** What the stand falls short. */
  readonly beyondReach: Mm;
}

/** All spots that a mic may be moved to (rule N1). */
export interface ClearSpotFamily {
  readonly freedoms: readonly Freedom[];
  /** The spot at some values; undefined where the mount cannot be so. */
  spotAt(values: readonly number[]): Spot | undefined;
  leewayOf(spot: Spot, halves: readonly number[]): Leeway;
  /** Whether any spot whose values are within halves of these may keep its aim. */
  mayAim(values: readonly number[], halves: readonly number[]): boolean;
}

/** How far a point may get, and how much more in any direction than what changing one value after the other adds up to (as `rooms` and `bends`), mm. */
export interface PointMove {
  readonly room: Mm;
  readonly bend: Mm;
}

/** What bounds the moves of two points bounds those of all between them. */
export const farther = (p: PointMove, q: PointMove): PointMove => ({
  room: Math.max(p.room, q.room),
  bend: Math.max(p.bend, q.bend),
});

/** The moves of groups of solids as a leeway has them. */
export const movesOfGroups = (
  groups: Spot['groups'],
  moveOf: (solid: MicSolid, group: readonly MicSolid[]) => PointMove,
): Pick<Leeway, 'rooms' | 'bends'> => {
  const moves = groups.map((group) => group.map((solid) => moveOf(solid, group)));
  return {
    rooms: moves.map((group) => group.map(({ room }) => room)),
    bends: moves.map((group) => group.map(({ bend }) => bend)),
  };
};
