import { PriorityQueue } from '../geometry/priorityQueue.ts';
import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { BoxDrift } from './boxDrift.ts';
import { changeFrom, costOf, leastCost, type SpotChange } from './clearSpotCost.ts';
import type { ClearSpotFamily, Freedom, Leeway, Spot } from './clearSpotFamily.ts';
import { micPose } from './micPose.ts';
import { TOLERANCE } from './moveSearch.ts';
import type { Sieve } from './sieve.ts';

/** What a search works with. */
export interface SpotScene {
  readonly family: ClearSpotFamily;
  readonly sieve: Sieve;
  readonly now: PlacedMic;
  /** Clearance that a spot must have, mm. */
  readonly margin: Mm;
  /** By the engine, mm. */
  readonly clearanceOf: (spot: Spot) => Mm;
  /** How deep something is in a spot's way (rule N4): what is deeper than a mic can move stays in its way. Undefined where the mic may stand. */
  readonly barred: (spot: Spot) => Mm | undefined;
}

/** How far a search is: boxes of spots looked at; and nothing left costs less than `cost` mm. */
export interface SpotProgress {
  readonly looked: number;
  readonly cost: Mm;
}

/** A clear spot, by its values. */
export interface FoundSpot {
  readonly values: readonly number[];
  readonly spot: Spot;
  readonly change: SpotChange;
  readonly cost: Mm;
  readonly clearance: Mm;
}

/** `ended`: whether the search came to its end; what was found before may not be the cheapest. */
export interface SpotOutcome {
  readonly found: FoundSpot | undefined;
  readonly ended: boolean;
}

/** Rule N5: the dearest change looked at, mm; and how much dearer than another a spot may be, the more of a share and a length. */
export const DEAREST: Mm = 500;
const SHARE = 1.05;
const LENGTH: Mm = 5;
/** Boxes looked at before a search gives up, and between two reports. */
const MOST_BOXES = 100_000;
const REPORT = 64;
/** What a spot has over the margin, so that the engine, which errs to the safe side, confirms it. */
const SPARE: Mm = 4 * TOLERANCE;

/** Spots whose values are within `halves` of the centre's. */
interface Box {
  readonly values: readonly number[];
  readonly halves: readonly number[];
  readonly spot: Spot | undefined;
  readonly leeway: Leeway | undefined;
  readonly change: SpotChange | undefined;
  /** No spot in it costs less, mm. */
  readonly least: Mm;
  /** Group by group the moves that may matter; null for a group that is clear all through. */
  readonly lists: readonly (Int32Array | null)[];
}

/**
 * Rule N5: the cheapest clear spot, by best-first branch and bound over boxes of spots. A box is left out when all its spots are too near to what
 * moves (rule C4), out of reach or barred by more than they can differ, cannot keep their aim or cost too much; else its middle is
 * tried and it is cut in three, down to a step of each freedom. So among the spots a whole number of steps away, none is cheaper than the one found
 * by more than 5 % and 5 mm.
 */
export function* searchSpots(scene: SpotScene): Generator<SpotProgress, SpotOutcome> {
  const search = new SpotSearch(scene);
  let looked = 0;
  for (let box = search.next(); box; box = search.next()) {
    if (looked >= MOST_BOXES) return { found: search.found, ended: false };
    search.look(box);
    looked += 1;
    if (looked % REPORT === 0) yield { looked, cost: box.least };
  }
  return { found: search.found, ended: true };
}

class SpotSearch {
  found: FoundSpot | undefined;
  private readonly scene: SpotScene;
  private readonly queue = new PriorityQueue<Box>();

  constructor(scene: SpotScene) {
    this.scene = scene;
    const { freedoms } = scene.family;
    const values = freedoms.map(() => 0);
    const spot = scene.family.spotAt(values);
    if (!spot) return;
    const all = scene.sieve.all();
    this.put(
      values,
      freedoms.map(firstHalf),
      spot.groups.map(() => all.slice()),
    );
  }

  /** The box that may hold the cheapest spot; undefined when none is worth a look. */
  next(): Box | undefined {
    const box = this.queue.pop();
    return box && box.least < this.limit() ? box : undefined;
  }

  look(box: Box): void {
    const { spot, leeway, change, values } = box;
    if (!spot || !leeway || !change) {
      this.cut(box, box.lists, undefined);
      return;
    }
    if ((spot.stand?.beyondReach ?? 0) > leeway.beyondReach) return;
    const { family } = this.scene;
    const drift = new BoxDrift({ family, values, halves: box.halves, spot, bends: leeway.bends });
    const lists = this.sift(box.lists, spot, { rooms: leeway.rooms, drift });
    if (!lists) return;
    if (costOf(change) < this.limit() && this.isClear(values, spot, lists)) {
      const depth = this.scene.barred(spot);
      if (depth === undefined) this.take(values, spot, change);
      else if (depth > mostOf(leeway)) return;
    }
    this.cut(box, lists, drift);
  }

  /** What costs as much is of no use any more. */
  private limit(): Mm {
    if (!this.found) return DEAREST;
    const { cost } = this.found;
    return Math.max(0, Math.min(cost / SHARE, cost - LENGTH));
  }

  /** Group by group what may matter in a box; undefined where one is too near all through. */
  private sift(
    lists: Box['lists'],
    spot: Spot,
    { rooms, drift }: { readonly rooms: Leeway['rooms']; readonly drift?: BoxDrift },
  ): Box['lists'] | undefined {
    const { sieve, margin } = this.scene;
    const rest: (Int32Array | null)[] = [];
    for (const [index, list] of lists.entries()) {
      const group = spot.groups[index] ?? [];
      const own = rooms[index] ?? new Float64Array(group.length);
      if (list === null || group.length === 0) {
        rest.push(null);
        continue;
      }
      const question = {
        threshold: margin + SPARE,
        rooms: own,
        room: Math.max(...own),
        tolerance: TOLERANCE,
        ...(drift && { drift: drift.ofGroup(index) }),
      };
      const finding = sieve.ask(micPose(group), question, list);
      if (finding === 'below') return undefined;
      rest.push(finding === 'clear' ? null : sieve.rest());
    }
    return rest;
  }

  /** Whether the middle of a box is within all limits, in reach, aimed, and clear of what moves. */
  private isClear(values: readonly number[], spot: Spot, lists: Box['lists']): boolean {
    return (
      isPossible(this.scene.family, values, spot) &&
      this.sift(lists, spot, { rooms: [] }) !== undefined
    );
  }

  private take(values: readonly number[], spot: Spot, change: SpotChange): void {
    const clearance = this.scene.clearanceOf(spot);
    if (clearance < this.scene.margin) return;
    this.found = { values, spot, change, cost: costOf(change), clearance };
  }

  /** Cuts a box in three along the freedom that moves the mic most, and keeps the parts that may hold something. */
  private cut(
    { values, halves, spot }: Box,
    lists: Box['lists'],
    drift: BoxDrift | undefined,
  ): void {
    const along = this.widest(halves, spot, drift);
    if (along === undefined) return;
    const half = halves[along] ?? 0;
    for (const off of [0, (2 * half) / 3, (-2 * half) / 3]) {
      const centre = values.with(along, Math.round(((values[along] ?? 0) + off) * 2) / 2);
      this.put(centre, halves.with(along, half / 3), lists);
    }
  }

  private widest(
    halves: readonly number[],
    spot: Spot | undefined,
    drift: BoxDrift | undefined,
  ): number | undefined {
    const { family } = this.scene;
    let most = 0;
    let widest: number | undefined;
    for (const [k, { step }] of family.freedoms.entries()) {
      const half = halves[k] ?? 0;
      if (half <= step / 2) continue;
      const only = halves.map((_, i) => (i === k ? half : 0));
      const alone = spot && family.leewayOf(spot, only);
      const moved = alone ? (drift?.share(k, alone) ?? mostOf(alone)) : half;
      if (moved > most || widest === undefined) [most, widest] = [moved, k];
    }
    return widest;
  }

  private put(values: readonly number[], halves: readonly number[], lists: Box['lists']): void {
    const { family, now } = this.scene;
    if (!isWithin(family, values, halves) || !family.mayAim(values, halves)) return;
    const spot = family.spotAt(values);
    const leeway = spot && family.leewayOf(spot, halves);
    const change = spot && changeFrom(now, spot);
    const least = leeway && change ? leastCost(change, leeway) : 0;
    if (least < this.limit()) {
      this.queue.push(least, { values, halves, spot, leeway, change, least, lists });
    }
  }
}

/** Half of the least odd power of three of steps, in the middle of which lies the present value, that holds all of a freedom. */
function firstHalf({ step, least, most }: Freedom): number {
  let half = step / 2;
  while (half < Math.max(-least, most)) half *= 3;
  return half;
}

const mostOf = ({ rooms }: Leeway): Mm => rooms.reduce((most, room) => Math.max(most, ...room), 0);

/** Whether any value within the halves is within the limits of its freedom. */
const isWithin = (
  { freedoms }: ClearSpotFamily,
  values: readonly number[],
  halves: readonly number[],
): boolean =>
  freedoms.every(({ least, most }, k) => {
    const [value = 0, half = 0] = [values[k], halves[k]];
    return value + half >= least && value - half <= most;
  });

/** Whether a spot is one at all: within its limits, aimed and in reach. */
function isPossible(family: ClearSpotFamily, values: readonly number[], spot: Spot): boolean {
  const exact = values.map(() => 0);
  return (
    (spot.stand?.beyondReach ?? 0) === 0 &&
    isWithin(family, values, exact) &&
    family.mayAim(values, exact)
  );
}

/** Halvings of a value's size that are tried, the largest first. */
const SIZES = [512, 256, 128, 64, 32, 16, 8, 4, 2, 1];

/**
 * A spot found, made simpler: values go back to what they were, or as near to it as the spot stays one that costs no more. So a change of one number
 * alone is not mixed with steps of others.
 */
export function simplest(scene: SpotScene, found: FoundSpot): FoundSpot {
  let best = found;
  const tryValue = (k: number, value: number): void => {
    const next = spotFor(scene, best.values.with(k, value));
    if (next && next.cost <= best.cost) best = next;
  };
  const { freedoms } = scene.family;
  for (const k of freedoms.keys()) if (best.values[k] !== 0) tryValue(k, 0);
  for (const [k, { step }] of freedoms.entries()) {
    for (const size of SIZES) {
      const value = best.values[k] ?? 0;
      if (Math.abs(value) >= size * step) tryValue(k, value - Math.sign(value) * size * step);
    }
  }
  return best;
}

/** The spot at some values, if it is a clear one. */
function spotFor(scene: SpotScene, values: readonly number[]): FoundSpot | undefined {
  const { family, now, margin } = scene;
  const spot = family.spotAt(values);
  if (!spot || !isPossible(family, values, spot)) return undefined;
  const clearance = scene.clearanceOf(spot);
  if (clearance < margin || scene.barred(spot) !== undefined) return undefined;
  const change = changeFrom(now, spot);
  return { values, spot, change, cost: costOf(change), clearance };
}
