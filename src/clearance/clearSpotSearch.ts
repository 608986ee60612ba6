import { PriorityQueue } from '../geometry/priorityQueue.ts';
import type { Mm } from '../units/quantity.ts';
import { BoxDrift } from './boxDrift.ts';
import { changeFrom, costOf, DEAREST, leastCost, type SpotChange } from './clearSpotCost.ts';
import type { Freedom, Leeway, Spot } from './clearSpotFamily.ts';
import { cheaper, simplest } from './clearSpotPolish.ts';
import { roomiest } from './clearSpotRoom.ts';
import { areNear, CLOSE, type Place, placesAround, ROUGH } from './clearSpotScout.ts';
import {
  confirmed,
  type FoundSpot,
  isPossible,
  isWithin,
  keepsClear,
  type MoveLists,
  SPARE,
  type SpotScene,
  SpotTrial,
} from './clearSpotTrial.ts';
import { micPose } from './micPose.ts';
import { TOLERANCE } from './searchBounds.ts';

/** How far a search is: nothing left costs less than `cost` mm; `spent` is the share of its budget that is used up. */
export interface SpotProgress {
  readonly cost: Mm;
  readonly spent: number;
}

/** `ended`: whether the search came to its end; what was found before may not be the cheapest. */
export interface SpotOutcome {
  readonly found: FoundSpot | undefined;
  readonly ended: boolean;
  /** Where nothing was found: the widest margin with which something was (rule N7), mm; undefined where the mic may stand nowhere. */
  readonly most?: Mm | undefined;
}

/** Rule N5: how much dearer than another a spot may be, the more of a share and a length. */
const SHARE = 1.08;
const LENGTH: Mm = 8;
/**
 * What a search may cost, in pieces of moves looked at, and as many as that for every solid of every box: about a second's work. What is not told by this
 * share of it is hard.
 */
const BUDGET = 5_000_000;
const PER_SOLID = 75;
const EASY = 0.1;
/** Spots of the look all round that are made cheaper at most; and what one may cost, beside the best so far, to be worth that. */
const MOST_STARTS = 16;
const WORTH = { share: 1.5, length: 30 };
/** Boxes between two reports. */
const REPORT = 32;

/** Spots whose values are within `halves` of the centre's. */
interface Box {
  readonly values: readonly number[];
  readonly halves: readonly number[];
  readonly lists: MoveLists;
  /** How often it was cut. */
  readonly level: number;
}

/**
 * Rule N5: the cheapest clear spot, by branch and bound over boxes of spots. A box is left out when all its spots are too near to what moves (rule
 * C4), out of reach or barred by more than they can differ, cannot keep their aim or cost too much; else its middle is tried and it is cut in three,
 * down to a step of each freedom. Boxes of every size take turns, of each size the one first that may hold the cheapest spot: large ones soon lead to
 * some spot, which is made cheaper (rule N6), small ones to the proof that there is none much cheaper. So among the spots a whole number of steps
 * away, none is cheaper than the one found by more than 8 % and 8 mm, unless the budget came to an end before the proof. When it
 * ends without any spot, those of a closer lattice are tried as well, and at last the place with the most room (rule N7), so that 'none found' is said
 * only where neither is one.
 */
export function* searchSpots(scene: SpotScene): Generator<SpotProgress, SpotOutcome> {
  const search = new SpotSearch(scene);
  const perBox = PER_SOLID * scene.now.solids.length;
  let looked = 0;
  let hasLookedAround = false;
  for (let box = search.next(); box; box = search.next()) {
    const spent = (scene.sieve.looked + looked * perBox) / BUDGET;
    if (spent >= 1) {
      yield* search.lookCloser();
      return yield* search.outcome(false);
    }
    if (spent >= EASY && !hasLookedAround) {
      hasLookedAround = true;
      yield* search.lookAround(spent);
    }
    search.look(box);
    looked += 1;
    if (looked % REPORT === 0) yield { cost: search.least(), spent };
  }
  return yield* search.outcome(true);
}

class SpotSearch {
  found: FoundSpot | undefined;
  private readonly scene: SpotScene;
  /** By the level of their boxes. */
  private readonly queues: PriorityQueue<Box>[] = [];
  private turn = 0;
  private readonly trial: SpotTrial;

  constructor(scene: SpotScene) {
    this.scene = scene;
    const { freedoms } = scene.family;
    const values = freedoms.map(() => 0);
    const spot = scene.family.spotAt(values);
    this.trial = new SpotTrial(scene, spot?.groups.length ?? 0);
    if (!spot) return;
    const all = scene.sieve.all();
    this.put(
      { values, halves: freedoms.map(firstHalf), level: 0 },
      spot.groups.map(() => all.slice()),
    );
  }

  /** A look all round: the clear places of a coarse lattice, each made cheaper, as long as that may lead to something cheaper. */
  *lookAround(spent: number): Generator<SpotProgress, void> {
    const { family, now } = this.scene;
    let tried: readonly (readonly number[])[] = [];
    const isKnown = ({ values }: Place): boolean =>
      tried.some((start) => areNear(family.freedoms, start, values));
    for (const place of placesAround(family, now, { strides: ROUGH, dearest: DEAREST })) {
      if (tried.length === MOST_STARTS || place.cost >= this.worthTrying()) return;
      if (isKnown(place)) continue;
      const start = this.trial.found(place.values, DEAREST);
      if (!start) continue;
      tried = [...tried, place.values, this.improve(start).values];
      yield { cost: this.least(), spent };
    }
  }

  /** Where the budget came to its end without any spot: the first clear one of a closer lattice, made cheaper. */
  *lookCloser(): Generator<SpotProgress, void> {
    if (this.found) return;
    const { family, now } = this.scene;
    const places = placesAround(family, now, { strides: CLOSE, dearest: DEAREST });
    for (const [looked, place] of places.entries()) {
      if (looked % REPORT === 0) yield { cost: this.least(), spent: 1 };
      const start = this.trial.found(place.values, DEAREST);
      if (!start) continue;
      this.improve(start);
      return;
    }
  }

  /** What was found in the end; where that is nothing, the place with the most room may still be a spot, and else tells with what margin it would be. */
  *outcome(ended: boolean): Generator<SpotProgress, SpotOutcome> {
    if (this.found) return { found: this.found, ended };
    const looks = roomiest(this.scene);
    let look = looks.next();
    while (!look.done) {
      yield { cost: this.least(), spent: 1 };
      look = looks.next();
    }
    const place = look.value;
    const start = place && this.trial.found(place.values, DEAREST);
    return start
      ? { found: this.improve(start), ended: false }
      : { found: undefined, ended, most: place?.margin };
  }

  /** A start that costs more can hardly be made cheaper than what was found. */
  private worthTrying(): Mm {
    return this.found ? WORTH.share * this.found.cost + WORTH.length : DEAREST;
  }

  /** What comes of a clear spot; kept when it is the cheapest so far. */
  private improve(start: FoundSpot): FoundSpot {
    const { freedoms } = this.scene.family;
    const best = simplest(freedoms, this.trial, cheaper(freedoms, this.trial, start));
    if (!this.found || best.cost < this.found.cost) this.found = best;
    return best;
  }

  /** The next box that is worth a look; undefined when none is left. */
  next(): Box | undefined {
    const limit = this.limit();
    for (let tried = 0; tried < this.queues.length; tried++) {
      this.turn = (this.turn + 1) % this.queues.length;
      const queue = this.queues[this.turn];
      if (queue && queue.firstKey() < limit) return queue.pop();
    }
    return undefined;
  }

  /** Nothing that is left costs less, mm. */
  least(): Mm {
    return Math.min(this.limit(), ...this.queues.map((queue) => queue.firstKey()));
  }

  look(box: Box): void {
    const { values, halves } = box;
    const { family, now } = this.scene;
    const spot = family.spotAt(values);
    if (!spot) {
      this.cut(box, box.lists, undefined, undefined);
      return;
    }
    const leeway = family.leewayOf(spot, halves);
    if ((spot.stand?.beyondReach ?? 0) > leeway.beyondReach) return;
    const drift = new BoxDrift({ family, values, halves, spot, bends: leeway.bends });
    const lists = this.sift(box.lists, spot, leeway.rooms, drift);
    if (!lists) return;
    const change = changeFrom(now, spot);
    if (costOf(change) < this.limit() && this.isClear(values, spot, lists)) {
      const depth = this.scene.barred(spot);
      if (depth === undefined) this.take(values, spot, change);
      else if (depth > mostOf(leeway)) return;
    }
    this.cut(box, lists, spot, drift);
  }

  /** What costs as much is of no use any more. */
  private limit(): Mm {
    if (!this.found) return DEAREST;
    const { cost } = this.found;
    return Math.max(0, Math.min(cost / SHARE, cost - LENGTH));
  }

  /** Group by group what may matter in a box; undefined where one is too near all through. */
  private sift(
    lists: MoveLists,
    spot: Spot,
    rooms: Leeway['rooms'],
    drift: BoxDrift,
  ): MoveLists | undefined {
    const { sieve, margin } = this.scene;
    const rest: (Int32Array | null)[] = [];
    for (const [index, list] of lists.entries()) {
      const group = spot.groups[index] ?? [];
      const own = rooms[index] ?? [];
      if (list === null || group.length === 0) {
        rest.push(null);
        continue;
      }
      const question = {
        threshold: margin + SPARE,
        rooms: own,
        room: Math.max(...own),
        tolerance: TOLERANCE,
        drift: drift.ofGroup(index),
      };
      const finding = sieve.ask(micPose(group), question, list);
      if (finding === 'below') return undefined;
      rest.push(finding === 'clear' ? null : sieve.rest());
    }
    return rest;
  }

  /** Whether the middle of a box is within all limits, in reach, aimed, and clear of what moves. */
  private isClear(values: readonly number[], spot: Spot, lists: MoveLists): boolean {
    return isPossible(this.scene.family, values, spot) && keepsClear(this.scene, spot, lists);
  }

  private take(values: readonly number[], spot: Spot, change: SpotChange): void {
    const first = confirmed(this.scene, { values, spot, change, cost: costOf(change) });
    if (first) this.improve(first);
  }

  /** Cuts a box in three along the freedom that moves the mic most, and keeps the parts that may hold something. */
  private cut(
    { values, halves, level }: Box,
    lists: MoveLists,
    spot: Spot | undefined,
    drift: BoxDrift | undefined,
  ): void {
    const along = this.widest(halves, spot, drift);
    if (along === undefined) return;
    const half = halves[along] ?? 0;
    for (const off of [0, (2 * half) / 3, (-2 * half) / 3]) {
      const centre = values.with(along, Math.round(((values[along] ?? 0) + off) * 2) / 2);
      this.put({ values: centre, halves: halves.with(along, half / 3), level: level + 1 }, lists);
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

  private put(
    { values, halves, level }: Pick<Box, 'values' | 'halves' | 'level'>,
    lists: MoveLists,
  ): void {
    const { family, now } = this.scene;
    if (!isWithin(family, values, halves) || !family.mayAim(values, halves)) return;
    const spot = family.spotAt(values);
    const leeway = spot && family.leewayOf(spot, halves);
    const change = spot && changeFrom(now, spot);
    const least = leeway && change ? leastCost(change, leeway) : 0;
    if (least >= this.limit()) return;
    while (this.queues.length <= level) this.queues.push(new PriorityQueue());
    this.queues[level]?.push(least, { values, halves, lists, level });
  }
}

/** Half of the least odd power of three of steps, in the middle of which lies the present value, that holds all of a freedom. */
function firstHalf({ step, least, most }: Freedom): number {
  let half = step / 2;
  while (half < Math.max(-least, most)) half *= 3;
  return half;
}

const mostOf = ({ rooms }: Leeway): Mm => rooms.reduce((most, room) => Math.max(most, ...room), 0);
