import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { changeFrom, costOf, type SpotChange } from './clearSpotCost.ts';
import type { ClearSpotFamily, Spot } from './clearSpotFamily.ts';
import { micPose } from './micPose.ts';
import { TOLERANCE } from './searchBounds.ts';
import type { Sieve } from './sieve.ts';

/** What a search works with. */
export interface SpotScene {
  readonly family: ClearSpotFamily;
  readonly sieve: Sieve;
  readonly now: PlacedMic;
  /** Clearance that a spot must have, mm. */
  readonly margin: Mm;
  /** By the engine, mm; what is known to be below `enough` may be lower still. */
  readonly clearanceOf: (solids: readonly MicSolid[], enough?: Mm) => Mm;
  /** How deep something is in a spot's way (rule N4): what is deeper than a mic can move stays in its way. Undefined where the mic may stand. */
  readonly barred: (spot: Spot) => Mm | undefined;
  /** How much room the player at rest leaves a spot, the margin at most; undefined where the mic may not stand with any margin. */
  readonly playerRoom: (spot: Spot) => Mm | undefined;
  /** Whether what stands is asked before what moves: where the mic is clear of what moves already, it is what rules most spots out, and the sooner told. */
  readonly standsFirst: boolean;
}

/** A clear spot, by its values. */
export interface FoundSpot {
  readonly values: readonly number[];
  readonly spot: Spot;
  readonly change: SpotChange;
  readonly cost: Mm;
  /** By the engine, mm. */
  readonly clearance: Mm;
}

/** What a spot has over the margin, so that the engine, which errs to the safe side, confirms it. */
export const SPARE: Mm = 4 * TOLERANCE;
/** The widest margin at which a spot of some clearance is taken: what keeps clear by less than TOLERANCE is passed over. */
export const widestMargin = (clearance: Mm): Mm => clearance - SPARE - TOLERANCE;

/** Group by group the moves that may matter; null for a group that is clear all through. */
export type MoveLists = readonly (Int32Array | null)[];

/** Tries single spots. What was in the way of one is looked at first for the next. */
export class SpotTrial {
  private readonly scene: SpotScene;
  private readonly lists: MoveLists;

  constructor(scene: SpotScene, groups: number) {
    this.scene = scene;
    const all = scene.sieve.all();
    this.lists = Array.from({ length: groups }, () => all.slice());
  }

  /** The spot at some values, if it is a clear one that costs less than `limit` mm. */
  found(values: readonly number[], limit: Mm): FoundSpot | undefined {
    const { family, now } = this.scene;
    const spot = family.spotAt(values);
    if (!spot || !isPossible(family, values, spot)) return undefined;
    const change = changeFrom(now, spot);
    const cost = costOf(change);
    if (cost >= limit) return undefined;
    const asked = [
      () => keepsClear(this.scene, spot, this.lists),
      () => this.scene.barred(spot) === undefined,
    ];
    if (this.scene.standsFirst) asked.reverse();
    if (!asked.every((isSo) => isSo())) return undefined;
    return confirmed(this.scene, { values, spot, change, cost });
  }
}

/** A spot that the engine vouches for. */
export function confirmed(
  { clearanceOf, margin }: SpotScene,
  spot: Omit<FoundSpot, 'clearance'>,
): FoundSpot | undefined {
  const clearance = clearanceOf(spot.spot.groups.flat());
  return clearance < margin ? undefined : { ...spot, clearance };
}

/** Whether a spot keeps clear of all that moves; the lists hold all that may come near to it. */
export function keepsClear({ sieve, margin }: SpotScene, spot: Spot, lists: MoveLists): boolean {
  const threshold = margin + SPARE;
  return spot.groups.every((group, index) => {
    const list = lists[index];
    if (!list || group.length === 0) return true;
    const rooms = group.map(() => 0);
    const question = { threshold, rooms, room: 0, tolerance: TOLERANCE };
    return sieve.ask(micPose(group), question, list) !== 'below';
  });
}

/** Whether a spot is one at all: within its limits, aimed and in reach. */
export function isPossible(
  family: ClearSpotFamily,
  values: readonly number[],
  spot: Spot,
): boolean {
  const exact = values.map(() => 0);
  return (
    (spot.stand?.beyondReach ?? 0) === 0 &&
    isWithin(family, values, exact) &&
    family.mayAim(values, exact)
  );
}

/** Whether any value within the halves is within the limits of its freedom. */
export const isWithin = (
  { freedoms }: ClearSpotFamily,
  values: readonly number[],
  halves: readonly number[],
): boolean =>
  freedoms.every(({ least, most }, k) => {
    const [value = 0, half = 0] = [values[k], halves[k]];
    return value + half >= least && value - half <= most;
  });
